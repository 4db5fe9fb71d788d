package covewalk.survey.file.meter;

import java.util.Arrays;
import java.util.Optional;

/** What a column of a meter's export can hold. */
public enum MeterField {
    /** Correlated colour temperature, K. */
    CCT_K("cct_k"),
    /** Distance from the Planckian locus in the CIE 1960 diagram. */
    DUV("duv"),
    /** CIE 1931 x. */
    X("x"),
    /** CIE 1931 y. */
    Y("y"),
    /** CIE 1976 u'. */
    U_PRIME("u_prime"),
    /** CIE 1976 v'. */
    V_PRIME("v_prime"),
    /** A column called just u: of CIE 1960 or, with the prime lost, of CIE 1976. */
    U_UNMARKED("u"),
    /** A column called just v. */
    V_UNMARKED("v"),
    /** CIE 1960 u, said to be so. */
    U_1960("u_1960"),
    /** CIE 1960 v, said to be so. */
    V_1960("v_1960"),
    /** Illuminance. */
    LUX("lux"),
    /** Luminance, which the log keeps in the place of illuminance. */
    LUMINANCE("luminance"),
    /** Where along the cove. */
    POSITION("position"),
    /** Which cove, by its id. */
    COVE("cove"),
    /** Date and time in one cell. */
    TAKEN_AT("taken_at"),
    /** The date alone. */
    DATE("date"),
    /** The time of day alone. */
    TIME("time"),
    /** What the row is called: a number, a sample's name. */
    NAME("name"),
    /** A remark. */
    NOTE("note"),
    /** Known, and of no use to a survey. */
    IGNORED("ignored");

    private final String code;

    MeterField(String code) {
        this.code = code;
    }

    /** The word for it in a header table and after {@code --map column=}. */
    public String code() {
        return code;
    }

    static Optional<MeterField> of(String code) {
        return Arrays.stream(values()).filter(field -> field.code.equals(code)).findFirst();
    }
}
