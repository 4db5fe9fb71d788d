package covewalk.demo;

import covewalk.colour.UvPrime;
import covewalk.demo.Leg.Stop;
import java.util.List;
import java.util.Random;

/** Walks the coves by the tables and writes the reading log, row by row. */
final class EveningWalk {

    private static final String HEADER =
            "reading,cove,position_m,role,setup,round,cct_k,duv,x,y,u_prime,v_prime,lux,taken_at,replaces,note";

    /** The meter was set to show CCT and Duv in this cove. */
    private static final String READ_AS_CCT_DUV = "C4";

    /** What is left of a cove's light when it is off: an exit sign, greenish. */
    private static final Offset EXIT_SIGN = new Offset(-14, 9);
    private static final double EXIT_SIGN_LUX = 1;

    private final List<TrueColour> colours = TrueColour.all();
    private final StringBuilder log = new StringBuilder(HEADER).append('\n');
    private final Meter meter;
    private final Clock clock;
    private int lastReading;

    /** @param seed the same one makes the same readings on every machine */
    EveningWalk(long seed) {
        this.meter = new Meter(new Random(seed));
        this.clock = new Clock(new Random(seed + 1));
    }

    /** The whole log of these legs. */
    String log(List<Leg> legs) {
        for (Leg leg : legs) {
            clock.toTheNextLeg();
            leg.stops().forEach(stop -> read(leg, stop));
        }
        return log.toString();
    }

    private void read(Leg leg, Stop stop) {
        clock.toTheNextStation();
        double positionM = Double.parseDouble(stop.positionM());
        TrueColour colour = colours.stream().filter(c -> c.lights(leg.cove(), positionM)).findFirst().orElseThrow();
        Offset here = colour.at(positionM).plus(scatter(leg)).plus(leg.wrong());
        for (int i = 0; i < stop.readings(); i++) {
            clock.forOneReading();
            switch (leg.kind()) {
                case WALK, MISREAD -> add(leg, stop, "walk", pair(leg, meter.read(here)), colour.luxAt(positionM));
                case REFERENCE -> add(leg, stop, "reference", pair(leg, meter.read(here)), colour.luxAt(positionM));
                case DARK -> add(leg, stop, "dark", pair(leg, meter.read(EXIT_SIGN)), EXIT_SIGN_LUX);
                case WITHDRAWN -> takeBack(leg, stop, pair(leg, meter.read(here)), colour.luxAt(positionM));
                case MISTYPED -> correct(leg, stop, pair(leg, meter.read(here)), colour.luxAt(positionM));
            }
        }
    }

    /** The reference spot is one place, the same at every visit. */
    private Offset scatter(Leg leg) {
        return leg.kind() == Leg.Kind.REFERENCE ? Offset.NONE : meter.scatterOfAPlace();
    }

    private static String pair(Leg leg, UvPrime colour) {
        return leg.cove().equals(READ_AS_CCT_DUV) ? Meter.cctDuv(colour) : Meter.xy(colour);
    }

    private void add(Leg leg, Stop stop, String role, String pair, double lux) {
        row(leg, stop, role, pair, meter.lux(lux), "", leg.note());
    }

    private void takeBack(Leg leg, Stop stop, String pair, double lux) {
        row(leg, stop, "walk", pair, meter.lux(lux), "", "");
        clock.forOneReading();
        row(leg, stop, "walk", ",,,", "", Integer.toString(lastReading), leg.note());
    }

    private void correct(Leg leg, Stop stop, String pair, double lux) {
        String light = meter.lux(lux);
        row(leg, stop, "walk", twoDigitsSwapped(pair), light, "", "");
        clock.forOneReading();
        row(leg, stop, "walk", pair, light, Integer.toString(lastReading), leg.note());
    }

    /** The second and third decimals of the last number. */
    private static String twoDigitsSwapped(String pair) {
        int second = pair.length() - 3;
        return pair.substring(0, second) + pair.charAt(second + 1) + pair.charAt(second) + pair.substring(second + 2);
    }

    private void row(Leg leg, Stop stop, String role, String pair, String lux, String replaces, String note) {
        lastReading++;
        log.append(String.join(",", Integer.toString(lastReading), leg.cove(), stop.positionM(), role, "A", "1", pair,
                "", "", lux, clock.toString(), replaces, note)).append('\n');
    }
}
