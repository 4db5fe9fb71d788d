package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/**
 * The noise of the readings of one set-up along a stretch, in u', v'.
 *
 * @param repeatability of one reading, when it is repeated at the same place
 * @param scatter of the stations about their stretch, in excess of repeatability and digits
 * @param degrees of freedom with which the noise of a station's mean was estimated from the stations; infinite where
 *     there were too few and the repeatability alone is relied on
 */
public record Noise(Repeatability repeatability, Covariance scatter, double degrees) {

    /**
     * Rounding averages out over readings whose other noise moves them across the steps of the last digit. With noise
     * of half a digit or more the mean is off by less than 0.3 % of a digit (computed); a uniform digit has a standard
     * deviation of 0.289 of itself, hence this ratio of it to the noise.
     */
    private static final double ROUNDING_AVERAGES_OUT = 0.577;

    /** Noise of one further reading at a station of its own, coarse digits left out. */
    public Covariance ofOneReading() {
        return repeatability.covariance().plus(scatter);
    }

    /** Whether digits this coarse shift a whole stretch alike, however many readings it has. */
    public boolean staysInTheMean(Covariance digits) {
        return digits.eigen().larger() > ROUNDING_AVERAGES_OUT * ofOneReading().eigen().smaller();
    }

    /** Of a station's mean about its stretch; without what stays in the mean of the whole stretch. */
    public Parts of(Station station) {
        double n = station.readings().size();
        boolean apart = repeatability.measured() || staysInTheMean(station.digits());
        return new Parts(repeatability.covariance().times(1 / n), scatter,
                apart ? Covariance.ZERO : station.digits().times(1 / n));
    }
}
