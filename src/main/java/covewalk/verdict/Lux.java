package covewalk.verdict;

import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** How bright a stretch is. */
final class Lux {

    private Lux() {
    }

    /** The mean of its stations, lx; where its colour drifts, on a straight line through them at that position. */
    static OptionalDouble at(Stretch stretch, double positionM) {
        double sum = 0;
        int count = 0;
        for (Station station : stretch.stations()) {
            if (station.lux().isPresent()) {
                sum += station.lux().getAsDouble();
                count++;
            }
        }
        if (count == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(stretch.line().drifts() && count > 1 ? onALine(stretch, positionM) : sum / count);
    }

    private static double onALine(Stretch stretch, double positionM) {
        SimpleRegression line = new SimpleRegression();
        for (Station station : stretch.stations()) {
            station.lux().ifPresent(lux -> line.addData(station.positionM(), lux));
        }
        return line.predict(positionM);
    }
}
