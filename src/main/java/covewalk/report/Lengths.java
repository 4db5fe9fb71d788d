package covewalk.report;

import covewalk.words.Numbers;

/** Positions in both units, the one that was asked for first. */
final class Lengths {

    private final Numbers numbers;
    private final boolean feetFirst;

    Lengths(Numbers numbers, LengthUnit first) {
        this.numbers = numbers;
        this.feetFirst = first == LengthUnit.FT;
    }

    boolean feetFirst() {
        return feetFirst;
    }

    /** As "5.00 m". */
    String first(double m) {
        return feetFirst ? numbers.feetInches(m) : numbers.metres(m);
    }

    /** As "16 ft 4 3/4 in". */
    String second(double m) {
        return feetFirst ? numbers.metres(m) : numbers.feetInches(m);
    }

    /** The ends of a length in the first unit. */
    String[] first(double fromM, double toM) {
        return feetFirst ? feet(fromM, toM) : metres(fromM, toM);
    }

    /** The ends of a length in the second unit. */
    String[] second(double fromM, double toM) {
        return feetFirst ? metres(fromM, toM) : feet(fromM, toM);
    }

    private String[] metres(double fromM, double toM) {
        return new String[] {numbers.fixed(fromM, 2), numbers.metres(toM)};
    }

    private String[] feet(double fromM, double toM) {
        return new String[] {numbers.feetInches(fromM), numbers.feetInches(toM)};
    }
}
