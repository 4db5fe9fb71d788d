package covewalk.app.text;

import covewalk.words.Numbers;
import java.util.function.BooleanSupplier;

/** Positions and lengths in the unit that somebody chose, with the other one behind it where there is room. */
public final class LengthWords {

    private final Numbers numbers;
    private final BooleanSupplier feet;

    /** @param feet whether feet and inches lead, asked each time */
    public LengthWords(Numbers numbers, BooleanSupplier feet) {
        this.numbers = numbers;
        this.feet = feet;
    }

    /** Of a length from 0 up, m, in the unit chosen. */
    public String of(double m) {
        return feet.getAsBoolean() ? numbers.feetInches(m) : numbers.metres(m);
    }

    /** The same without idle zeros, where one number stands large on a screen: "6.5 m". */
    public String brief(double m) {
        return feet.getAsBoolean() ? numbers.feetInches(m) : numbers.plain(m, 2) + " m";
    }

    /** The same in the other unit. */
    public String other(double m) {
        return feet.getAsBoolean() ? numbers.metres(m) : numbers.feetInches(m);
    }

    /** As "5.00 m (16 ft 4 3/4 in)". */
    public String both(double m) {
        return of(m) + " (" + other(m) + ")";
    }
}
