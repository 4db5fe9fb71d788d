package covewalk.report.text;

import covewalk.report.punch.PunchWords;
import covewalk.survey.Cove;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.PlannedJoint;
import covewalk.verdict.plan.Stop;
import covewalk.verdict.plan.WalkPlan;
import covewalk.words.CautionWords;
import covewalk.words.Numbers;
import covewalk.words.PlanWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A plan as a table of plain text, at most 100 columns wide, for a terminal or to print and take along. */
public final class PlanTable {

    private static final int WIDTH = 98;
    private static final int LONGEST_REEL = 20;
    private static final Set<Integer> FIGURES = Set.of(0, 4);

    private final Words words;
    private final Numbers numbers;
    private final PlanWords plan;
    private final List<String> lines = new ArrayList<>();

    public PlanTable(Words words) {
        this.words = words;
        this.numbers = words.numbers();
        this.plan = new PlanWords(words);
    }

    /** @return lines ending in a line feed */
    public String of(WalkPlan walk) {
        lines.clear();
        say(new CautionWords(words).headLine());
        say(plan.goal(walk));
        plan.setUp(walk).ifPresent(this::say);
        say(plan.noise(walk));
        say(words.text("plan.lift"));
        walk.coves().forEach(this::cove);
        lines.add("");
        lines.add(words.text("plan.total", numbers.fixed(walk.readings(), 0)));
        return String.join("\n", lines) + "\n";
    }

    private void cove(CovePlan planned) {
        Cove cove = planned.cove();
        lines.add("");
        PunchWords punch = new PunchWords(words);
        say(words.text("plan.cove", punch.cove(cove), numbers.metres(cove.lengthM()), punch.datum(cove), plan.access(planned),
                numbers.fixed(planned.readings(), 0), plan.minutes(planned)));
        planned.whyNothing().ifPresentOrElse(this::nothing, () -> stops(planned));
        outlook(planned);
    }

    private void nothing(CovePlan.WhyNothing why) {
        PlainText.wrapped(words.text("plan.nothing." + why.code()), WIDTH - 2, 0).forEach(line -> lines.add("  " + line));
    }

    private void stops(CovePlan planned) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("place", "feet", "what", "reel", "readings").stream()
                .map(column -> words.text("plan.column." + column)).toList());
        for (Stop stop : planned.stops()) {
            rows.add(List.of(numbers.metres(stop.positionM()), numbers.feetInches(stop.positionM()),
                    words.text("plan.what." + stop.kind().code()), Shortened.of(PlainText.calm(stop.reel()), LONGEST_REEL),
                    numbers.fixed(stop.readings(), 0)));
        }
        lines.addAll(PlainText.columns(rows, FIGURES));
    }

    /** Each shortcoming once, with all the joints that it holds for. */
    private void outlook(CovePlan planned) {
        Map<List<String>, List<String>> places = new LinkedHashMap<>();
        for (PlannedJoint joint : planned.joints()) {
            if (joint.outlook() != PlannedJoint.Outlook.SETTLES && joint.outlook() != PlannedJoint.Outlook.SETTLED) {
                String steps = numbers.fixed(joint.settlesSteps().orElse(0) + 0.05, 1); // rounded up: never promised too much
                places.computeIfAbsent(List.of(joint.outlook().code(), steps), first -> new ArrayList<>())
                        .add(numbers.metres(joint.joint().positionM()));
            }
        }
        places.forEach((why, where) -> say(words.text("plan.outlook." + why.get(0), why.get(1), String.join(", ", where))));
    }

    private void say(String sentence) {
        lines.addAll(PlainText.wrapped(sentence, WIDTH, 2));
    }
}
