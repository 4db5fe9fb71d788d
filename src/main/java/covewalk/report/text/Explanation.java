package covewalk.report.text;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.survey.Limits;
import covewalk.verdict.Budget;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.RoundShares;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.NoteWords;
import covewalk.words.Numbers;
import covewalk.words.RuleWords;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Why one place has the verdict it has: what was compared, the budget of its uncertainty, the rule, in plain words. */
public final class Explanation {

    private static final int WIDTH = 98;

    /** From this many degrees of freedom on Student's t is the normal distribution to all printed digits. */
    private static final double MANY = 10_000;

    private final Words words;
    private final Numbers numbers;
    private final List<Line> lines = new ArrayList<>();

    /** A sentence in one cell, a row of the budget in four (figure, part, side, source), or a gap with none. */
    public record Line(List<String> cells) {

        public Line {
            cells = List.copyOf(cells);
        }

        static Line of(String... cells) {
            return new Line(List.of(cells));
        }
    }

    public Explanation(Words words) {
        this.words = words;
        this.numbers = words.numbers();
    }

    /**
     * @param cove one of the judgement's
     * @param positionM m from its datum; the nearest joint or fault is explained
     * @return lines ending in a line feed; empty where the cove has neither joint nor fault
     */
    public Optional<String> of(Judgement judgement, CoveJudgement cove, double positionM) {
        return lines(judgement, cove, positionM).map(found -> String.join("\n", Explanation.plain(found)) + "\n");
    }

    /** The same for who can draw a table. */
    public Optional<List<Line>> lines(Judgement judgement, CoveJudgement cove, double positionM) {
        Limits limits = judgement.survey().limits();
        return ExplainedPlace.nearest(cove, limits.neighbourSteps(), positionM).map(place -> {
            lines.clear();
            say("explain.place", cove.cove().id(), words.lengths().first(place.positionM()), words.lengths().second(place.positionM()),
                    words.kind(place.kind()), String.join(" | ", place.reels()), words.verdict(place.verdict()));
            place.difference().ifPresentOrElse(difference -> measured(judgement, place, difference),
                    () -> say("explain.not-read"));
            new NoteWords(words).sentences(place.notes()).forEach(note -> say("table.remark", note));
            return List.copyOf(lines);
        });
    }

    /** Sentences wrapped, rows in columns. */
    private static List<String> plain(List<Line> lines) {
        List<String> plain = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            if (line.cells().size() > 1) {
                rows.add(line.cells());
                continue;
            }
            plain.addAll(rows.isEmpty() ? List.of() : PlainText.columns(rows, Set.of(0)));
            rows.clear();
            plain.addAll(line.cells().isEmpty() ? List.of("") : PlainText.wrapped(line.cells().get(0), WIDTH, 2));
        }
        return plain;
    }

    private void measured(Judgement judgement, ExplainedPlace place, Difference difference) {
        lines.add(Line.of());
        place.sides().forEach(this::side);
        say("explain.difference." + place.kind().code(), numbers.steps(difference.steps()), numbers.fixed(difference.deltaUPrime(), 5),
                numbers.fixed(difference.deltaVPrime(), 5), words.towards(difference.towards()),
                numbers.steps(difference.standardUncertaintySteps()));
        say("explain.steps", new RuleWords(words).steps(judgement));
        lines.add(Line.of());
        budget(place.budget());
        lines.add(Line.of());
        rule(judgement.survey().limits(), place);
        if (place.verdict() == Verdict.UNSETTLED) {
            say("explain.settle", words.toSettle(place.settle()));
        }
        new NoteWords(words).sentences(judgement.notes().stream().filter(note -> note.kind().corrects()).toList())
                .forEach(note -> say("table.remark", note));
    }

    private void side(Stretch stretch) {
        String temperature = ColourTemperature.of(stretch.line().centre()) instanceof CctDuv white
                ? words.text("explain.temperature", numbers.fixed(white.cctK(), 0), numbers.fixed(white.duv(), 4)) : "";
        say(stretch.line().drifts() ? "explain.side.drift" : "explain.side.level", stretch.placement().reel(),
                words.lengths().first(stretch.fromM()), words.lengths().first(stretch.toM()),
                numbers.fixed(stretch.stations().size(), 0), numbers.fixed(stretch.readings(), 0),
                numbers.fixed(stretch.line().centre().u(), 4), numbers.fixed(stretch.line().centre().v(), 4), temperature);
    }

    private void budget(Budget budget) {
        say("explain.budget");
        budget.entries().forEach(entry -> lines.add(Line.of(numbers.steps(entry.steps()),
                words.text("explain.part." + code(entry.part())), words.text("explain.of." + code(entry.of())),
                words.text("explain.source." + code(entry.source())))));
        lines.add(Line.of(numbers.steps(budget.wholeSteps()), words.text("explain.together"), "", ""));
        if (budget.degrees() < MANY) {
            say("explain.degrees", numbers.fixed(Math.floor(budget.degrees()), 0));
        }
    }

    private void rule(Limits limits, ExplainedPlace place) {
        say("explain.rule", numbers.plain(place.limitSteps(), 2), chance(1 - place.confidence().beyond()),
                chance(1 - place.confidence().within()));
        int round = Math.max(1, place.rounds());
        say("explain.rate", numbers.percent(limits.errorRate() * RoundShares.of(round)),
                numbers.percent(limits.errorRate()), numbers.fixed(round, 0));
        if (limits.errorPer() == Limits.ErrorPer.SURVEY) {
            say("explain.holm");
        }
    }

    /** A chance of error is rounded up: it is never understated. */
    private String chance(double share) {
        return numbers.percent(Math.min(1, Math.ceil(share * 1000) / 1000));
    }

    private static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void say(String key, String... details) {
        lines.add(Line.of(words.text(key, details)));
    }
}
