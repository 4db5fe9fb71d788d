package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Whether the days of an item follow one another: it is put right, then looked at again, then accepted. What stands in the log
 * already is taken as it is; of a new row only the days that it sets are looked at.
 */
public final class PunchOrder {

    private static final int DAY = "2026-12-01".length();

    /** Two days, the earlier first, and the sentence where they stand the other way round. */
    private record Pair(PunchColumn first, PunchColumn then, String key) {

        boolean isSetBy(PunchChange change) {
            return change.cells().containsKey(first) || change.cells().containsKey(then);
        }

        boolean isTurned(Map<PunchColumn, String> cells) {
            return cells.containsKey(first) && cells.containsKey(then) && day(cells.get(then)).compareTo(day(cells.get(first))) < 0;
        }

        Problem problem(PunchState state) {
            return Problem.refusal(key, state.item(), day(state.text(then)), day(state.text(first)));
        }

        /** Of a date with or without initials, which {@link PunchColumn#check} let pass; letters sort as days do. */
        private static String day(String text) {
            return text.substring(0, DAY);
        }
    }

    private static final List<Pair> PAIRS = List.of(
            new Pair(PunchColumn.DONE, PunchColumn.REINSPECTED, "punch.order.reinspected-done"),
            new Pair(PunchColumn.DONE, PunchColumn.ACCEPTED, "punch.order.accepted-done"),
            new Pair(PunchColumn.REINSPECTED, PunchColumn.ACCEPTED, "punch.order.accepted-reinspected"));

    private PunchOrder() {
    }

    /**
     * What would stand the wrong way round.
     *
     * @param before how the items stand without the changes
     */
    public static List<Problem> problems(PunchStates before, List<PunchChange> changes) {
        List<Problem> problems = new ArrayList<>();
        PunchStates after = before.after(changes);
        for (PunchChange change : changes) {
            PunchState state = after.item(change.item()).orElseThrow();
            PAIRS.stream().filter(pair -> pair.isSetBy(change) && pair.isTurned(state.cells())).map(pair -> pair.problem(state))
                    .filter(problem -> !problems.contains(problem)).forEach(problems::add);
        }
        return problems;
    }
}
