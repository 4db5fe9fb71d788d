package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The colour in one row of a table: every pair that is whole, or why there is none. A pair that does not count and is
 * no colour is not taken.
 */
final class ColourCells {

    /** v of a white light is near 0.35 in the diagram of 1960 and near 0.52 in that of 1976; this lies between them. */
    private static final double BETWEEN_1960_AND_1976 = 0.43;
    private static final List<MeterField> IN_ORDER = List.of(MeterField.X, MeterField.Y, MeterField.U_PRIME, MeterField.V_PRIME,
            MeterField.CCT_K, MeterField.DUV);

    private final NumberCells cells;
    private final Optional<TypedPair> xy;
    private final Optional<TypedPair> uvPrime;
    private final Optional<TypedPair> cctDuv;

    ColourCells(NumberCells cells) {
        this.cells = cells;
        xy = pair(MeterField.X, MeterField.Y);
        uvPrime = pair(MeterField.U_PRIME, MeterField.V_PRIME)
                .filter(pair -> xy.isEmpty() || ColourLimits.isSound(TypedColour.ofUvPrime(pair.first(), pair.second())));
        cctDuv = pair(MeterField.CCT_K, MeterField.DUV)
                .filter(pair -> xy.isEmpty() && uvPrime.isEmpty()
                        || ColourLimits.isSound(TypedColour.ofCctDuv(pair.first(), pair.second())));
    }

    private Optional<TypedPair> pair(MeterField first, MeterField second) {
        Optional<Typed> one = cells.number(first);
        return one.flatMap(left -> cells.number(second).map(right -> new TypedPair(left, right)));
    }

    /** Every whole pair, or empty where there is none. */
    Optional<TypedColour> typed() {
        boolean any = xy.isPresent() || uvPrime.isPresent() || cctDuv.isPresent();
        return any ? Optional.of(new TypedColour(cctDuv, xy, uvPrime)) : Optional.empty();
    }

    /** Halves of pairs and cells that are no number, as written: the log has no column for them, its note has room. */
    List<String> leftOver() {
        List<String> left = new ArrayList<>();
        for (MeterField field : IN_ORDER) {
            if (!cells.isBlank(field) && !isInAPair(field)) {
                left.add(cells.title(field) + " " + cells.text(field));
            }
        }
        return left;
    }

    private boolean isInAPair(MeterField field) {
        return switch (field) {
            case X, Y -> xy.isPresent();
            case U_PRIME, V_PRIME -> uvPrime.isPresent();
            default -> cctDuv.isPresent();
        };
    }

    /** Why there is no colour: the first cell that stands in the way. */
    Problem whyNone() {
        for (MeterField field : IN_ORDER) {
            if (!cells.isBlank(field) && cells.number(field).isEmpty()) {
                return cells.notANumber(field);
            }
        }
        return unsureDiagram().orElseGet(() -> Problem.refusal("import.row.no-colour"));
    }

    /** u and v alone do not get into the log, which keeps u' and v' with the digits as typed. */
    private Optional<Problem> unsureDiagram() {
        if (!cells.isBlank(MeterField.U_1960) && !cells.isBlank(MeterField.V_1960)) {
            return Optional.of(Problem.refusal("import.row.uv-1960").inColumn(cells.title(MeterField.V_1960)));
        }
        Optional<Typed> v = cells.number(MeterField.V_UNMARKED);
        return v.map(found -> unmarked(found).inColumn(cells.title(MeterField.V_UNMARKED)));
    }

    private Problem unmarked(Typed v) {
        return v.value() < BETWEEN_1960_AND_1976 ? Problem.refusal("import.row.uv-like-1960", v.text())
                : Problem.refusal("import.row.uv-like-1976", v.text(), cells.title(MeterField.U_UNMARKED), cells.title(MeterField.V_UNMARKED));
    }

    /** What is wrong with the colour, if anything is. Its u' and v' may be u and v of 1960 under titles with a prime. */
    Optional<Problem> problem() {
        boolean like1960 = xy.isEmpty() && uvPrime.filter(pair -> pair.second().value() < BETWEEN_1960_AND_1976).isPresent();
        return typed().flatMap(ColourLimits::refusal).map(found -> like1960
                ? Problem.refusal("import.row.prime-like-1960", cells.text(MeterField.V_PRIME)).inColumn(cells.title(MeterField.V_PRIME))
                : found.inColumn(cells.titleOf(found.column())));
    }
}
