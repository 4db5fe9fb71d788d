package covewalk.verdict;

import covewalk.survey.LabelLine;
import covewalk.survey.Reel;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Which pattern is consistent with what (common practice, no source): the first row that fits counts. */
final class HintTable {

    /** What a hint may look at. */
    record Pattern(FaultKind kind, boolean labelsDiffer, boolean darkerAwayFromFeed) {
    }

    private record Row(FaultKind kind, Predicate<Pattern> fits, Hint hint) {
    }

    private static final List<Row> ROWS = List.of(
            new Row(FaultKind.JOINT, Pattern::labelsDiffer, Hint.DIFFERENT_LOT_OR_BIN),
            new Row(FaultKind.JOINT, pattern -> true, Hint.LABELS_AGREE),
            new Row(FaultKind.MID_REEL, pattern -> true, Hint.SPLICE_OR_SURFACE),
            new Row(FaultKind.DRIFT, Pattern::darkerAwayFromFeed, Hint.VOLTAGE_DROP),
            new Row(FaultKind.DRIFT, pattern -> true, Hint.HEAT_OR_AGEING),
            new Row(FaultKind.LONE_STATION, pattern -> true, Hint.DIRT_OR_MISREAD),
            new Row(FaultKind.OFF_TARGET, pattern -> true, Hint.WRONG_PRODUCT_OR_METER));

    /** Lines of a label that tell two reels of one batch apart, and so say nothing of their colour. */
    private static final Set<String> ONE_OF_A_KIND = Set.of("serial");

    private HintTable() {
    }

    static Hint hint(Pattern pattern) {
        return ROWS.stream()
                .filter(row -> row.kind == pattern.kind && row.fits.test(pattern))
                .findFirst().map(Row::hint).orElse(Hint.NONE);
    }

    static boolean labelsDiffer(Reel one, Reel other) {
        return !sameForAll(one).equals(sameForAll(other));
    }

    private static List<LabelLine> sameForAll(Reel reel) {
        return reel.label().stream().filter(line -> !ONE_OF_A_KIND.contains(line.field())).toList();
    }
}
