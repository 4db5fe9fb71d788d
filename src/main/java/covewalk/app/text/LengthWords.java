package covewalk.app.text;

import covewalk.words.Numbers;

/** Positions and lengths in the unit that somebody chose, with the other one behind it where there is room. */
public final class LengthWords {

    private final Numbers numbers;
    private final boolean feet;

    /** @param feet whether feet and inches lead */
    public LengthWords(Numbers numbers, boolean feet) {
        this.numbers = numbers;
        this.feet = feet;
    }

    /** Of a length from 0 up, m, in the unit chosen. */
    public String of(double m) {
        return feet ? numbers.feetInches(m) : numbers.metres(m);
    }

    /** The same in the other unit. */
    public String other(double m) {
        return feet ? numbers.metres(m) : numbers.feetInches(m);
    }

    /** As "5.00 m (16 ft 4 3/4 in)". */
    public String both(double m) {
        return of(m) + " (" + other(m) + ")";
    }
}
