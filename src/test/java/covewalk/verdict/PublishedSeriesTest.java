package covewalk.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.UvPrime;
import covewalk.verdict.stretch.Noise;
import covewalk.verdict.stretch.Stretch;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Published series (check-values.csv) read as if they were u' along one reel, a station a metre. */
class PublishedSeriesTest {

    private static final double STEP_SQUARED = UvPrime.STEP * UvPrime.STEP;

    private static List<Stretch> stretches(double[] series, double unitsPerStep, double declaredSteps) {
        double mean = Arrays.stream(series).average().orElseThrow();
        Walk walk = new Walk(1, 0).reel(0, series.length, "L1");
        walk.declaredUv = declaredSteps * UvPrime.STEP;
        for (int i = 0; i < series.length; i++) {
            walk.add(i + 0.5, (series[i] - mean) / unitsPerStep, 500, 1);
        }
        return walk.judged().stretches();
    }

    /** GUM 4.4.3: twenty temperatures read at one place, here a degree a step. */
    @Test
    void repeatabilityIsTheStandardDeviationOfTheRepeats() {
        Walk walk = new Walk(1, 0).reel(0, 5, "L1");
        for (double degrees : Published.series("gum-443-data")) {
            walk.add(2, degrees - 100, 500, 1);
        }
        Noise noise = walk.judged().stretches().get(0).noise();

        assertEquals(Published.value("gum-443-sd"), Math.sqrt(noise.repeatability().covariance().uu() / STEP_SQUARED), 0.002);
        assertEquals(19, noise.repeatability().repeats().count());
    }

    /** GUM H.5: ten days of five readings, here ten stations; 100 microvolts a step. */
    @Test
    void repeatsAndStationsAreToldApartAsDaysAre() {
        double[] means = Published.series("gum-h5-means");
        double[] sds = Published.series("gum-h5-sds");
        Walk walk = new Walk(1, 0).reel(0, 10, "L1");
        for (int day = 0; day < means.length; day++) {
            for (int k = -2; k <= 2; k++) { // five readings of this mean and standard deviation
                walk.add(day + 0.5, (means[day] - 10) * 1e4 + sds[day] / 100 * k / Math.sqrt(2.5), 500, 1);
            }
        }
        Noise noise = walk.judged().stretches().get(0).noise();

        double within = Math.sqrt(noise.repeatability().covariance().uu() / STEP_SQUARED);
        assertEquals(Published.value("gum-h5-within") / 100, within, 0.006);
        double between = Published.value("gum-h5-between") / 100;
        assertEquals(between * between - within * within / 5, noise.scatter().uu() / STEP_SQUARED, 0.015);
    }

    /** NIST/SEMATECH 1.4.2.6: drifts, t of the slope 5.58, neighbours much alike. A step for 0.0001. */
    @Test
    void filterTransmittanceDrifts() {
        List<Stretch> found = stretches(Published.series("nist-filt-data"), 0.0001, 0.5);

        assertTrue(found.size() > 1 || found.get(0).line().drifts(), "nothing found");
    }

    /** NIST/SEMATECH 1.4.2.8: t of the slope -1.96, too little to call a drift over so many. A step for 0.02. */
    @Test
    void theHeatFlowMeterHardlyDrifts() {
        List<Stretch> found = stretches(Published.series("nist-zarr13-data"), 0.02, 0.5);

        assertTrue(found.size() <= 2, found.size() + " stretches");
    }

    /** As NIST/SEMATECH 1.4.2.1, 500 normal random numbers, but our own: that series is not at hand. */
    @Test
    void randomNumbersDoNotChange() {
        Random random = new Random(1421);
        List<Stretch> found = stretches(random.doubles(500).map(ignored -> random.nextGaussian()).toArray(), 1, 0.5);

        assertEquals(1, found.size());
        assertTrue(!found.get(0).line().drifts() && found.get(0).aside().isEmpty());
    }
}
