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
        SimpleRegression line = new SimpleRegression();
        double sum = 0;
        for (Station station : stretch.stations()) {
            if (station.lux().isPresent()) {
                line.addData(station.positionM(), station.lux().getAsDouble());
                sum += station.lux().getAsDouble();
            }
        }
        if (line.getN() == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(stretch.line().drifts() && line.getN() > 1 ? line.predict(positionM) : sum / line.getN());
    }
}
