package covewalk.words;

/** Positions in both units, the one that was asked for first. */
public final class Lengths {

    private static final double M_PER_FOOT = 0.3048; // exact, by the international yard of 1959

    private final Numbers numbers;
    private final boolean feetFirst;

    Lengths(Numbers numbers, LengthUnit first) {
        this.numbers = numbers;
        this.feetFirst = first == LengthUnit.FT;
    }

    public boolean feetFirst() {
        return feetFirst;
    }

    /** As "5.00 m". */
    public String first(double m) {
        return feetFirst ? numbers.feetInches(m) : numbers.metres(m);
    }

    /** The same for a narrow column whose heading names the metre: "5.00"; feet and inches stand there in one line. */
    public String cell(double m) {
        return feetFirst ? numbers.feetInches(m).replace(' ', '\u00a0') : numbers.fixed(m, 2);
    }

    /** What changes by so much along a metre, along the first unit. */
    public double perUnit(double perM) {
        return feetFirst ? perM * M_PER_FOOT : perM;
    }

    /** As "16 ft 4 3/4 in". */
    public String second(double m) {
        return feetFirst ? numbers.metres(m) : numbers.feetInches(m);
    }

    /** The ends of a length in the first unit. */
    public String[] first(double fromM, double toM) {
        return feetFirst ? feet(fromM, toM) : metres(fromM, toM);
    }

    /** The ends of a length in the second unit. */
    public String[] second(double fromM, double toM) {
        return feetFirst ? metres(fromM, toM) : feet(fromM, toM);
    }

    private String[] metres(double fromM, double toM) {
        return new String[] {numbers.fixed(fromM, 2), numbers.metres(toM)};
    }

    private String[] feet(double fromM, double toM) {
        return new String[] {numbers.feetInches(fromM), numbers.feetInches(toM)};
    }
}
