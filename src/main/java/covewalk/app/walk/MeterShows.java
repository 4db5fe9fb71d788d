package covewalk.app.walk;

import covewalk.app.parts.DigitPattern;
import covewalk.survey.Reading;
import covewalk.survey.TypedPair;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the meter shows, chosen once.
 *
 * @param pair the two numbers that are typed
 * @param decimals of x and y, of u' and v', or of Duv: 3 to 5
 * @param lux whether lux is typed as well
 */
record MeterShows(Shown pair, int decimals, boolean lux) {

    static final int FEWEST = 3;
    static final int MOST = 5;
    static final MeterShows USUAL = new MeterShows(Shown.XY, 4, false);

    MeterShows {
        decimals = Math.max(FEWEST, Math.min(MOST, decimals));
    }

    /** What the last reading of a log was typed as; empty where there is none. */
    static Optional<MeterShows> ofLog(List<Reading> log) {
        for (int i = log.size() - 1; i >= 0; i--) {
            Reading reading = log.get(i);
            if (reading.colour().isPresent()) {
                return Arrays.stream(Shown.values()).filter(pair -> pair.of(reading.colour().get()).isPresent()).findFirst()
                        .map(pair -> new MeterShows(pair, decimals(pair.of(reading.colour().get()).orElseThrow()), reading.lux().isPresent()));
            }
        }
        return Optional.empty();
    }

    private static int decimals(TypedPair pair) {
        String digits = pair.second().text();
        return digits.indexOf('.') < 0 ? USUAL.decimals : digits.length() - digits.indexOf('.') - 1;
    }

    /** As it is remembered: "xy 4 lux". */
    String code() {
        return pair.code() + " " + decimals + (lux ? " lux" : "");
    }

    static Optional<MeterShows> of(String code) {
        String[] parts = code.split(" ");
        return parts.length < 2 || !parts[1].matches("[3-5]") ? Optional.empty()
                : Arrays.stream(Shown.values()).filter(pair -> pair.code().equals(parts[0])).findFirst()
                        .map(pair -> new MeterShows(pair, Integer.parseInt(parts[1]), parts.length > 2));
    }

    DigitPattern first() {
        return pair.firstPattern(decimals);
    }

    DigitPattern second() {
        return pair.secondPattern(decimals);
    }

    /** What stands at the meter beside a number. */
    String name(Entry.Field field) {
        return field == Entry.Field.FIRST ? pair.first() : pair.second();
    }

    MeterShows with(Shown other) {
        return new MeterShows(other, decimals, lux);
    }

    MeterShows withDecimals(int other) {
        return new MeterShows(pair, other, lux);
    }

    MeterShows withLux(boolean typed) {
        return new MeterShows(pair, decimals, typed);
    }
}
