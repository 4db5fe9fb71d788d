package covewalk.verdict.evidence;

import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import covewalk.colour.Xyz;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.verdict.stretch.ColourOf;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The light that is left with the cove off, taken off the readings at the same spot with the same set-up: tristimulus
 * values add (CIE 15, from memory), so they are what is subtracted, with the lux as Y.
 */
final class DarkLight implements ColourOf {

    /** A larger share of the lit lux shifts a colour (common practice, no source: 1 % of daylight on 2700 K is 0.9 step). */
    static final double MATTERS = 0.002;

    /** Sums over the dark readings of a spot. */
    private static final class Dark {
        private double x;
        private double y;
        private double z;
        private int readings;

        void add(Reading reading) {
            if (reading.lux().isPresent() && reading.lux().get().value() >= 0) {
                Xy xy = reading.colour().orElseThrow().toUvPrime().toXy();
                double lux = reading.lux().get().value();
                x += lux * xy.x() / xy.y();
                y += lux;
                z += lux * Math.max(0, 1 - xy.x() - xy.y()) / xy.y();
                readings++;
            }
        }

        double lux() {
            return y / readings;
        }
    }

    private final Map<Spot, Dark> spots = new HashMap<>();

    DarkLight(List<Reading> standing) {
        standing.stream().filter(reading -> reading.role() == Role.DARK)
                .forEach(reading -> spots.computeIfAbsent(Spot.of(reading), spot -> new Dark()).add(reading));
    }

    @Override
    public UvPrime of(Reading reading) {
        UvPrime colour = ColourOf.AS_TYPED.of(reading);
        Dark dark = subtracted(reading) ? spots.get(Spot.of(reading)) : null;
        return dark == null ? colour : less(colour.toXy(), reading.lux().orElseThrow().value(), dark).toUvPrime();
    }

    private static Xy less(Xy xy, double lux, Dark dark) {
        double n = dark.readings;
        return new Xyz(Math.max(0, lux * xy.x() / xy.y() - dark.x / n), lux - dark.lux(),
                Math.max(0, lux * (1 - xy.x() - xy.y()) / xy.y() - dark.z / n)).chromaticity();
    }

    /** Whether light was subtracted from this reading. */
    boolean subtracted(Reading reading) {
        double share = share(reading);
        return share > MATTERS && share < 0.5; // with half of the light foreign there is no colour to save
    }

    /** Dark lux over lit lux; 0 where no dark reading is from the same spot, or one of them has no lux. */
    double share(Reading reading) {
        Dark dark = spots.isEmpty() ? null : spots.get(Spot.of(reading));
        if (dark == null || dark.readings == 0) {
            return 0;
        }
        double lit = reading.lux().map(Typed::value).orElse(0.0);
        return lit > 0 ? dark.lux() / lit : 0;
    }

    /** A dark reading was taken there, and lux is missing on one side. */
    boolean unknown(Reading reading) {
        Dark dark = spots.isEmpty() ? null : spots.get(Spot.of(reading));
        return dark != null && (dark.readings == 0 || reading.lux().isEmpty());
    }
}
