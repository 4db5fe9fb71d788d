package covewalk.survey.file.meter;

import covewalk.survey.Typed;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Illuminance in the log's lux, from whatever unit the meter wrote. */
final class Brightness {

    private Brightness() {
    }

    /**
     * In lux, with the digits that the typed ones carry. A foot-candle is 10.76391 lx (one lumen a square foot, the foot
     * 0.3048 m exactly), so one decimal less is kept than was typed: the rounding then stays below what the last digit
     * typed left open. The reading's note keeps what was typed.
     */
    static Typed inLux(Typed number, MeterUnit unit) {
        if (unit.isLogUnit()) {
            return number;
        }
        BigDecimal typed = new BigDecimal(number.text());
        int decimals = Math.max(0, typed.scale() - (unit == MeterUnit.KILOLUX ? 3 : 1));
        BigDecimal lux = typed.multiply(unit.inLogUnit()).setScale(decimals, RoundingMode.HALF_EVEN);
        return new Typed(lux.toPlainString(), lux.doubleValue());
    }
}
