package covewalk.survey.file.meter;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.NoCct;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import covewalk.survey.Problem;
import covewalk.survey.TypedPair;
import java.util.Optional;
import java.util.function.Supplier;

/** Whether two numbers are a colour that a survey can use: CCT 1000 to 20000 K, Duv -0.05 to 0.05, and a real light's. */
final class ColourLimits {

    private ColourLimits() {
    }

    static Optional<Problem> ofXy(TypedPair pair) {
        return problem("x", "y", pair, () -> ColourTemperature.of(new Xy(pair.first().value(), pair.second().value())));
    }

    static Optional<Problem> ofUvPrime(TypedPair pair) {
        return problem("u'", "v'", pair, () -> ColourTemperature.of(new UvPrime(pair.first().value(), pair.second().value())));
    }

    static Optional<Problem> ofCctDuv(TypedPair pair) {
        double cctK = pair.first().value();
        double duv = pair.second().value();
        if (!(cctK >= CctDuv.MIN_CCT_K && cctK <= CctDuv.MAX_CCT_K)) {
            return Optional.of(Problem.refusal("import.row.cct-range", pair.first().text()));
        }
        if (!(Math.abs(duv) <= CctDuv.MAX_DUV)) {
            return Optional.of(Problem.refusal("import.row.duv-range", pair.second().text()));
        }
        CctDuv colour = new CctDuv(cctK, duv);
        return problem("CCT", "Duv", pair, () -> colour.isReal() ? colour : NoCct.NO_REAL_COLOUR);
    }

    private static Optional<Problem> problem(String first, String second, TypedPair pair, Supplier<ColourTemperature> colour) {
        String found = first + " " + pair.first().text() + ", " + second + " " + pair.second().text();
        return whyNot(colour).map(key -> Problem.refusal(key, found));
    }

    private static Optional<String> whyNot(Supplier<ColourTemperature> colour) {
        try {
            return colour.get() instanceof NoCct why ? Optional.of(key(why)) : Optional.empty();
        } catch (IllegalArgumentException outsideTheDiagram) {
            return Optional.of(key(NoCct.NO_REAL_COLOUR));
        }
    }

    private static String key(NoCct why) {
        return switch (why) {
            case NO_REAL_COLOUR -> "import.row.no-real-colour";
            case TOO_FAR_FROM_LOCUS -> "import.row.too-far";
            case BELOW_1000_K -> "import.row.too-warm";
            case ABOVE_20000_K -> "import.row.too-cold";
        };
    }
}
