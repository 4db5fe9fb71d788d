package covewalk.verdict.stretch;

import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Groups the readings of one cove into stations. */
public final class Stations {

    /** From the datum on; of one position set-up by set-up. */
    private static final Comparator<Reading> ALONG_THE_COVE =
            Comparator.<Reading>comparingDouble(reading -> reading.positionM().value()).thenComparing(Reading::setUp);

    private Stations() {
    }

    /**
     * @param readings of one cove, each with a colour
     * @param colours by which they are judged
     * @return one station for each set-up and position, along the cove from its datum
     */
    public static List<Station> of(Collection<Reading> readings, ColourOf colours) {
        List<Reading> along = new ArrayList<>(readings);
        along.sort(ALONG_THE_COVE); // those of one place stay in the order of the log
        List<Station> stations = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= along.size(); i++) {
            if (i == along.size() || ALONG_THE_COVE.compare(along.get(first), along.get(i)) != 0) {
                stations.add(station(along.subList(first, i), colours));
                first = i;
            }
        }
        return List.copyOf(stations);
    }

    /** @param readings of one place and one set-up */
    private static Station station(List<Reading> readings, ColourOf colours) {
        double u = 0;
        double v = 0;
        CovarianceSum digits = new CovarianceSum();
        for (Reading reading : readings) {
            UvPrime colour = colours.of(reading);
            u += colour.u();
            v += colour.v();
            digits.add(reading.colour().orElseThrow().digits(), 1);
        }
        int n = readings.size();
        Reading any = readings.get(0);
        return new Station(any.setUp(), any.positionM().value(), readings, new UvPrime(u / n, v / n), digits.times(1.0 / n),
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
