package covewalk.app.walk;

import covewalk.app.parts.DigitPattern;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.util.Locale;
import java.util.Optional;

/** Which two numbers a meter shows for a colour. */
enum Shown {
    XY("x", "y"), UV("u'", "v'"), CCT("CCT", "Duv");

    private static final int CCT_DIGITS = 4;

    private final String first;
    private final String second;

    Shown(String first, String second) {
        this.first = first;
        this.second = second;
    }

    /** The letter of the first number, the same in every language. */
    String first() {
        return first;
    }

    String second() {
        return second;
    }

    /** The word in what is remembered, and in texts. */
    String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    DigitPattern firstPattern(int decimals) {
        return this == CCT ? DigitPattern.whole(CCT_DIGITS) : DigitPattern.fraction(decimals);
    }

    DigitPattern secondPattern(int decimals) {
        return this == CCT ? DigitPattern.smallSigned(decimals) : DigitPattern.fraction(decimals);
    }

    TypedColour colour(Typed one, Typed other) {
        return switch (this) {
            case XY -> TypedColour.ofXy(one, other);
            case UV -> TypedColour.ofUvPrime(one, other);
            case CCT -> TypedColour.ofCctDuv(one, other);
        };
    }

    /** Its two numbers in a colour; empty where the meter gave others. */
    Optional<TypedPair> of(TypedColour colour) {
        return switch (this) {
            case XY -> colour.xy();
            case UV -> colour.uvPrime();
            case CCT -> colour.cctDuv();
        };
    }
}
