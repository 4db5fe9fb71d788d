package covewalk.survey.file.meter;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The units that meters and people write, and what one of them is in the log's own unit. */
enum MeterUnit {
    NONE("1", "", "-", "--", "[-]"),
    KELVIN("1", "k", "kelvin"),
    LUX("1", "lx", "lux"),
    KILOLUX("1000", "klx", "klux"),
    /** One lumen a square foot; the foot is 0.3048 m exactly, so this is rounded at the tenth digit. */
    FOOTCANDLE("10.76391042", "fc", "ftc", "ft-cd", "footcandle", "footcandles", "lm/ft2"),
    CANDELA("1", "cd/m2", "cd/m^2", "cd/qm", "nt", "nit", "nits"),
    METRE("1", "m", "metre", "metres", "meter", "meters"),
    CENTIMETRE("0.01", "cm"),
    MILLIMETRE("0.001", "mm"),
    /** International foot, exact. */
    FOOT("0.3048", "ft", "foot", "feet", "'"),
    INCH("0.0254", "in", "inch", "inches", "\""),
    OTHER("1", "%", "nm", "s", "ms", "h", "min", "hz", "v", "a", "w", "c", "\u00b0c", "deg", "\u00b5mol/m2s", "w/m2", "lm", "sdcm");

    private final BigDecimal inLogUnit;
    private final List<String> writings;

    MeterUnit(String inLogUnit, String... writings) {
        this.inLogUnit = new BigDecimal(inLogUnit);
        this.writings = List.of(writings);
    }

    /** What one of this is in K, lx, cd/m2 or m. */
    BigDecimal inLogUnit() {
        return inLogUnit;
    }

    boolean isLength() {
        return this == METRE || this == CENTIMETRE || this == MILLIMETRE || this == FOOT || this == INCH;
    }

    /** Whether a number in this unit goes to the log with its digits untouched. */
    boolean isLogUnit() {
        return inLogUnit.compareTo(BigDecimal.ONE) == 0;
    }

    static Optional<MeterUnit> of(String written) {
        String plain = Normalizer.normalize(written.strip(), Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(unit -> unit.writings.contains(plain)).findFirst();
    }
}
