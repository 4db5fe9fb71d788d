package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/**
 * The noise of the readings of one set-up, in u', v'. The digits typed come on top.
 *
 * @param repeatability of one reading, when it is repeated at the same place
 * @param scatter of the stations about their stretch, in excess of repeatability and digits
 * @param degrees of freedom with which the scatter was estimated; infinite where none was
 */
public record Noise(Covariance repeatability, Covariance scatter, double degrees) {

    /**
     * Rounding averages out over readings whose other noise moves them across the steps of the last digit. With noise
     * of half a digit or more the mean is off by less than 0.3 % of a digit (computed); a uniform digit has a standard
     * deviation of 0.289 of itself, hence this ratio of it to the noise.
     */
    private static final double ROUNDING_AVERAGES_OUT = 0.577;

    /** Noise of one reading at a station of its own, the digits left out. */
    public Covariance ofOneReading() {
        return repeatability.plus(scatter);
    }

    /** Whether digits this coarse shift a whole stretch alike, however many readings it has. */
    public boolean staysInTheMean(Covariance digits) {
        return digits.eigen().larger() > ROUNDING_AVERAGES_OUT * ofOneReading().eigen().smaller();
    }

    /** Of a station's mean about its stretch; without what stays in the mean of the whole stretch. */
    Covariance of(Station station) {
        double n = station.readings().size();
        Covariance mean = scatter.plus(repeatability.times(1 / n));
        return staysInTheMean(station.digits()) ? mean : mean.plus(station.digits().times(1 / n));
    }
}
