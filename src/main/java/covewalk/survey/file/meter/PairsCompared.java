package covewalk.survey.file.meter;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.TypedColour;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares the pairs that a meter gave for one colour: each says the same within what its digits leave open. */
final class PairsCompared {

    /**
     * From the standard uncertainty of a pair's digits to the farthest that they let it be: root 3 to the half-width of a
     * uniform distribution (GUM 4.3.7), root 2 for both numbers at their ends at once, in the same direction.
     */
    private static final double FARTHEST = Math.sqrt(6);
    /** Meters sum with tables and constants a little unlike ours; a fiftieth of a step is no disagreement (our choice). */
    private static final double TOLERATED = 0.02 * UvPrime.STEP;

    private PairsCompared() {
    }

    /** One remark on all rows whose pairs disagree, or empty. */
    static Optional<Problem> disagreement(List<RowOutcome> rows) {
        int many = 0;
        int firstLine = 0;
        double worst = 0;
        for (RowOutcome row : rows) {
            double steps = row.reading().flatMap(Reading::colour).map(PairsCompared::stepsApart).orElse(0.0);
            if (steps > 0) {
                firstLine = many++ == 0 ? row.row().line() : firstLine;
                worst = Math.max(worst, steps);
            }
        }
        return many == 0 ? Optional.empty()
                : Optional.of(Problem.warning("import.pairs-disagree", many, rows.size(), tenths(worst)).at("", firstLine, ""));
    }

    /** The largest distance in steps between pairs that disagree, 0 where none do. */
    static double stepsApart(TypedColour colour) {
        List<TypedColour> pairs = apart(colour);
        double worst = 0;
        for (int i = 0; i < pairs.size(); i++) {
            for (int k = 0; k < i; k++) {
                double away = pairs.get(i).toUvPrime().stepsTo(pairs.get(k).toUvPrime());
                double open = (reach(pairs.get(i)) + reach(pairs.get(k)) + TOLERATED) / UvPrime.STEP;
                worst = away > open ? Math.max(worst, away) : worst;
            }
        }
        return worst;
    }

    private static List<TypedColour> apart(TypedColour colour) {
        List<TypedColour> pairs = new ArrayList<>();
        colour.xy().ifPresent(pair -> pairs.add(TypedColour.ofXy(pair.first(), pair.second())));
        colour.uvPrime().ifPresent(pair -> pairs.add(TypedColour.ofUvPrime(pair.first(), pair.second())));
        colour.cctDuv().ifPresent(pair -> pairs.add(TypedColour.ofCctDuv(pair.first(), pair.second())));
        return pairs;
    }

    /** How far the digits let the colour be from where they say, at most. */
    private static double reach(TypedColour pair) {
        Covariance digits = pair.digits();
        return FARTHEST * Math.sqrt(digits.uu() + digits.vv());
    }

    private static String tenths(double steps) {
        return BigDecimal.valueOf(steps).setScale(1, RoundingMode.HALF_EVEN).toPlainString();
    }
}
