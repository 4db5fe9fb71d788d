package covewalk.survey.file.meter;

import covewalk.survey.Typed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a length along a cove, in metres, millimetres, feet, or feet and inches. */
final class Length {

    /** 12' 6 1/2", also 12 ft 6.5 in, 12'-6", 12'. */
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "(\\d+)\\s*(?:'|ft)\\s*-?\\s*(?:(\\d+(?:[.,]\\d+)?)?\\s*(?:(\\d+)\\s*/\\s*(\\d+))?\\s*(?:\"|''|in))?");
    private static final Pattern WITH_UNIT = Pattern.compile("(.*[\\d.,])\\s*([a-z'\"]*)");
    private static final int LONGEST = 60;
    /** Positions on site are known to a millimetre at best. */
    private static final int DECIMALS = 3;

    private Length() {
    }

    /**
     * The length in metres. Metres keep their digits as typed; others are rounded to a millimetre.
     *
     * @param unit what a number without a unit is in
     */
    static Optional<Typed> metres(String written, DecimalMark mark, MeterUnit unit) {
        if (written.length() > LONGEST) {
            return Optional.empty();
        }
        String text = written.strip().replaceAll("[\u2032\u2019\u2018`\u00b4]", "'").replaceAll("[\u2033\u201d]", "\"").replace('\u00a0', ' ');
        Matcher feet = FEET_AND_INCHES.matcher(text);
        if (feet.matches()) {
            return feetAndInches(feet);
        }
        Matcher parts = WITH_UNIT.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Optional<MeterUnit> own = parts.group(2).isEmpty() ? Optional.of(unit) : MeterUnit.of(parts.group(2));
        return own.filter(MeterUnit::isLength)
                .flatMap(known -> CellNumber.read(parts.group(1), mark, known).map(number -> inMetres(number, known)));
    }

    private static Typed inMetres(Typed number, MeterUnit unit) {
        return unit == MeterUnit.METRE ? number : typed(new BigDecimal(number.text()).multiply(unit.inLogUnit()));
    }

    private static Optional<Typed> feetAndInches(Matcher parts) {
        BigDecimal inches = new BigDecimal(parts.group(1)).multiply(BigDecimal.valueOf(12));
        if (parts.group(2) != null) {
            inches = inches.add(new BigDecimal(parts.group(2).replace(',', '.')));
        }
        if (parts.group(4) != null) {
            BigDecimal below = new BigDecimal(parts.group(4));
            if (below.signum() == 0) {
                return Optional.empty();
            }
            inches = inches.add(new BigDecimal(parts.group(3)).divide(below, 6, RoundingMode.HALF_EVEN));
        }
        return Optional.of(typed(inches.multiply(MeterUnit.INCH.inLogUnit())));
    }

    private static Typed typed(BigDecimal metres) {
        BigDecimal rounded = metres.setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return new Typed(rounded.toPlainString(), rounded.doubleValue());
    }
}
