package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Groups the readings of one cove into stations. */
public final class Stations {

    private record Spot(String setUp, double positionM) {
    }

    private Stations() {
    }

    /**
     * @param readings of one cove, each with a colour
     * @param colours by which they are judged
     * @return one station for each set-up and position, along the cove from its datum
     */
    public static List<Station> of(Collection<Reading> readings, ColourOf colours) {
        Map<Spot, List<Reading>> spots = new LinkedHashMap<>();
        for (Reading reading : readings) {
            spots.computeIfAbsent(new Spot(reading.setUp(), reading.positionM().value()), spot -> new ArrayList<>(2))
                    .add(reading);
        }
        return spots.entrySet().stream()
                .map(spot -> station(spot.getKey(), spot.getValue(), colours))
                .sorted(Comparator.comparingDouble(Station::positionM).thenComparing(Station::setUp))
                .toList();
    }

    private static Station station(Spot spot, List<Reading> readings, ColourOf colours) {
        double u = 0;
        double v = 0;
        Covariance digits = Covariance.ZERO;
        for (Reading reading : readings) {
            UvPrime colour = colours.of(reading);
            u += colour.u();
            v += colour.v();
            digits = digits.plus(reading.colour().orElseThrow().digits());
        }
        int n = readings.size();
        return new Station(spot.setUp(), spot.positionM(), readings, new UvPrime(u / n, v / n), digits.times(1.0 / n),
                meanLux(readings), colours);
    }

    private static OptionalDouble meanLux(List<Reading> readings) {
        double sum = 0;
        int count = 0;
        for (Reading reading : readings) {
            if (reading.lux().isPresent()) {
                sum += reading.lux().get().value();
                count++;
            }
        }
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
    }
}
