package covewalk.verdict.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The tables of the page on verdicts, each from so many trials a row. */
final class VerdictTables {

    private final int trials;

    VerdictTables(int trials) {
        this.trials = trials;
    }

    String joints(List<JointCase> cases) {
        List<String> rows = new ArrayList<>();
        for (JointCase joint : cases) {
            rows.add(row(joint.name(), joint.shares(joint.trials(trials))));
        }
        return table("joints truly at the limit | called beyond | called within", rows);
    }

    String targets() {
        List<String> rows = new ArrayList<>();
        for (JointCase reel : TargetTrials.atTheLimit()) {
            rows.add(row("off the target: " + reel.name(), TargetTrials.fromTarget(reel, trials)));
            rows.add(row("off its own claim: " + reel.name(), TargetTrials.fromClaim(reel, trials)));
        }
        return table("reels truly at the limit | called beyond, or the claim not shown | called within, or the claim shown", rows);
    }

    String lastStation() {
        List<String> rows = new ArrayList<>();
        for (double steps : new double[] {0, 1, 1.5, 2}) {
            LastStationTrials.Outcome walks = LastStationTrials.of(steps, trials);
            rows.add(String.format(Locale.ROOT, "%s | %s | %s", steps == 0 ? "none" : steps + " steps", percent(walks.found()),
                    percent(walks.told())));
        }
        return table("change before the last station of ten, scatter 0.3 step | walks that find a change | others with the note", rows);
    }

    String rounds() {
        List<String> rows = new ArrayList<>();
        for (JointCase first : RoundTrials.readAgain()) {
            rows.add(row(first.name() + "; one more a side each round, same places",
                    RoundTrials.untilSettled(first, false, 1, trials)));
            rows.add(row(first.name() + "; three more a side each round, new places",
                    RoundTrials.untilSettled(first, true, 3, trials)));
        }
        return table("joints truly at the limit, up to ten rounds | beyond at last | within at last", rows);
    }

    String falseChanges() {
        List<String> rows = new ArrayList<>();
        for (ReelCase reel : ReelTrials.withoutAChange()) {
            rows.add(reel.name() + " | " + percent(reel.anything(trials / 4)));
        }
        return table("coves without a change | show one", rows);
    }

    String changes() {
        List<String> rows = new ArrayList<>();
        for (double steps : new double[] {1, 1.5, 2, 3, 5}) {
            ReelTrials.Placed placed = ReelTrials.change(steps, trials / 4);
            rows.add(String.format(Locale.ROOT, "%s steps | %s | %s", steps, percent(placed.found()), percent(placed.held())));
        }
        return table("one change in a reel of 10 m | found | the range given holds the place", rows);
    }

    String courses() {
        List<String> rows = new ArrayList<>();
        List<ReelCase> all = new ArrayList<>(ReelTrials.plain());
        all.addAll(ReelTrials.faint());
        for (ReelCase reel : all) {
            Map<ReelCase.Seen, Double> shares = reel.shares(trials / 4);
            StringBuilder row = new StringBuilder(reel.name());
            for (ReelCase.Seen seen : ReelCase.Seen.values()) {
                row.append(" | ").append(percent(shares.get(seen)));
            }
            rows.add(row.toString());
        }
        return table("a reel of 5 m, 20 stations | nothing | one change | drift | lone station | several", rows);
    }

    String settling() {
        List<String> rows = new ArrayList<>();
        for (JointCase joint : RoundTrials.differencesThatAskForMore()) {
            RoundTrials.Asked asked = RoundTrials.asAskedFor(joint, trials);
            rows.add(asked.name() + " | " + asked.asked() + " | " + percent(asked.settled()));
        }
        return table("true difference, first walk | asked for more | settled by them", rows);
    }

    String survey() {
        return table("40 joints of one survey, all at the limit, `errorPer` survey | surveys with even one wrong",
                List.of("four stations a reel, scatter 0.3 step | " + percent(SurveyTrials.anyWrong(trials / 2))));
    }

    String power() {
        List<String> rows = new ArrayList<>();
        for (double sd : new double[] {0.3, 0.7}) {
            for (PowerTrials.Point point : PowerTrials.curve(sd, 0.4, trials)) {
                rows.add(String.format(Locale.ROOT, "%.1f | %.1f | %s | %s", sd, point.truth(), percent(point.best()),
                        percent(point.found())));
            }
        }
        return table("noise of the difference, steps | true difference, steps | best possible | here", rows);
    }

    private static String row(String name, Shares shares) {
        return name + " | " + percent(shares.beyondShare()) + " | " + percent(shares.withinShare());
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    private static String table(String header, List<String> rows) {
        StringBuilder table = new StringBuilder("| " + header + " |\n|" + " --- |".repeat(header.split("\\|").length) + "\n");
        rows.forEach(row -> table.append("| ").append(row).append(" |\n"));
        return table.toString();
    }
}
