package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/**
 * The noise of the readings of one set-up along a stretch, in u', v'.
 *
 * @param repeatability of one reading, when it is repeated at the same place
 * @param scatter of the stations about their stretch, in excess of repeatability and digits
 * @param found what the readings themselves show of it, whatever was declared
 */
public record Noise(Repeatability repeatability, Covariance scatter, Found found) {

    /**
     * What the readings show of the noise of a station's mean.
     *
     * @param ofAStation its covariance, all parts together
     * @param share one over the number of readings of such a station, in the mean
     * @param degrees of freedom with which it was estimated; infinite where the readings show nothing, and the
     *     covariance is zero
     */
    public record Found(Covariance ofAStation, double share, double degrees) {

        /** Too few readings to show anything. */
        public static final Found NOTHING = new Found(Covariance.ZERO, 1, Double.POSITIVE_INFINITY);
    }

    /** Degrees of freedom with which the readings show it; infinite where they do not. */
    public double degrees() {
        return found.degrees();
    }

    /** Noise of one further reading at a station of its own, coarse digits left out. */
    public Covariance ofOneReading() {
        return repeatability.covariance().plus(scatter);
    }

    /** Of a station's mean about its stretch; without what stays in the mean of the whole stretch. */
    public Parts of(Station station) {
        double share = 1.0 / station.readings().size();
        Covariance digits = repeatability.measured() ? Covariance.ZERO : varyingDigits(station).times(share);
        Parts parts = new Parts(repeatability.covariance().times(share), scatter, digits, Covariance.ZERO);
        return new Parts(parts.repeatability(), scatter, digits, found(parts.sum(), station.digits()));
    }

    /** A station that was read more often than others varies less, as far as its readings and not the place do. */
    private Covariance found(Covariance station, Covariance digits) {
        Covariance one = repeatability.measured() ? repeatability.covariance() : repeatability.covariance().plus(digits);
        Covariance usual = one.times(found.share()).plus(scatter);
        double most = usual.uu() + usual.vv();
        return most > 0 ? found.ofAStation().times((station.uu() + station.vv()) / most) : found.ofAStation();
    }

    private Covariance varyingDigits(Station station) {
        double left = left(station.digits());
        return station.digits().times(1 - left * left);
    }

    /**
     * How much of the rounding of digits stays in the mean of many stations, because no noise moves them over the digits'
     * edges. Only the repeatability is relied on to do so: scatter seen through coarse digits may be their own jumping.
     */
    public Covariance stayingInTheMean(Covariance digits) {
        double left = left(digits);
        return digits.times(left * left);
    }

    private double left(Covariance digits) {
        double rounding = digits.eigen().larger();
        return rounding > 0 ? Dither.left(repeatability.sureUv(), rounding) : 0;
    }
}
