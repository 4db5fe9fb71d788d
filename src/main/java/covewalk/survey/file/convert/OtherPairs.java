package covewalk.survey.file.convert;

import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedColourCheck;
import covewalk.survey.TypedPair;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands in a row beside the pair that counts. Half a pair stays half: its other half, taken from another pair, would
 * make a colour that nobody measured. Whole pairs should be one colour. A CCT without Duv is no half: meters give it so.
 *
 * @param problem the key of what is wrong with them, or empty
 * @param halves what is not filled in
 */
record OtherPairs(String problem, List<Quantity> halves) {

    private static final OtherPairs NONE = new OtherPairs("", List.of());

    static OtherPairs of(RowCells row, TableHead head) {
        if (head.places().size() == 2) {
            return NONE; // most tables, and the quick way through a million rows
        }
        List<Quantity> halves = new ArrayList<>();
        int whole = 0;
        for (Quantity[] pair : Quantity.PAIRS) {
            boolean first = isThere(row, head, pair[0]);
            boolean second = isThere(row, head, pair[1]);
            boolean both = isNumber(row, head, pair[0]) && isNumber(row, head, pair[1]);
            whole += both ? 1 : 0;
            boolean cctAlone = pair[0] == Quantity.CCT_K && isNumber(row, head, pair[0]) && !second;
            if ((first || second) && !both && !cctAlone) {
                halves.addAll(List.of(pair));
            }
        }
        if (!halves.isEmpty()) {
            return new OtherPairs("convert.half-pair", halves);
        }
        return whole > 1 && !agree(row, head) ? new OtherPairs("convert.disagree", List.of()) : NONE;
    }

    private static boolean isThere(RowCells row, TableHead head, Quantity quantity) {
        return head.place(quantity) >= 0 && !row.isBlank(head.place(quantity));
    }

    private static boolean isNumber(RowCells row, TableHead head, Quantity quantity) {
        return !Double.isNaN(row.number(head.place(quantity)));
    }

    private static boolean agree(RowCells row, TableHead head) {
        Optional<TypedPair> xy = pair(row, head, Quantity.X, Quantity.Y);
        Optional<TypedPair> uvPrime = pair(row, head, Quantity.U_PRIME, Quantity.V_PRIME);
        Optional<TypedPair> cctDuv = pair(row, head, Quantity.CCT_K, Quantity.DUV);
        return (xy.isEmpty() && uvPrime.isEmpty() && cctDuv.isEmpty())
                || TypedColourCheck.problems(new TypedColour(cctDuv, xy, uvPrime)).stream()
                .noneMatch(problem -> problem.refused() || problem.key().equals("colour.disagree"));
    }

    private static Optional<TypedPair> pair(RowCells row, TableHead head, Quantity one, Quantity other) {
        return typed(row, head, one).flatMap(first -> typed(row, head, other).map(second -> new TypedPair(first, second)));
    }

    private static Optional<Typed> typed(RowCells row, TableHead head, Quantity quantity) {
        int column = head.place(quantity);
        if (column < 0 || row.isBlank(column)) {
            return Optional.empty();
        }
        int start = row.innerStart(column);
        return Typed.of(new String(row.bytes(), start, row.innerEnd(column) - start, StandardCharsets.ISO_8859_1));
    }
}
