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
        Covariance repeated = repeatability.covariance().times(share);
        Covariance digits = varyingDigits(station, share);
        return new Parts(repeated, scatter, digits, found(varianceOf(repeated, digits, 1), station.digits()));
    }

    /** The same with all parts together. */
    Covariance wholeOf(Station station) {
        double share = 1.0 / station.readings().size();
        CovarianceSum sum = new CovarianceSum();
        sum.add(repeatability.covariance(), share);
        sum.add(varyingDigits(station, share), 1);
        sum.add(scatter, 1);
        return sum.times(1);
    }

    /** A station that was read more often than others varies less, as far as its readings and not the place do. */
    private Covariance found(double station, Covariance digits) {
        double usual = varianceOf(repeatability.covariance(), repeatability.measured() ? Covariance.ZERO : digits, found.share());
        return usual > 0 ? found.ofAStation().times(station / usual) : found.ofAStation();
    }

    /** Of u' and v' together, for a station with this share of the noise of one reading. */
    private double varianceOf(Covariance reading, Covariance digits, double share) {
        double uu = (reading.uu() + digits.uu()) * share + scatter.uu();
        double vv = (reading.vv() + digits.vv()) * share + scatter.vv();
        return uu + vv;
    }

    /** None beside a measured repeatability, which holds them already. */
    private Covariance varyingDigits(Station station, double share) {
        if (repeatability.measured()) {
            return Covariance.ZERO;
        }
        double left = left(station.digits());
        return station.digits().times(1 - left * left).times(share);
    }

    /**
     * How much of the rounding of digits stays in the mean of many stations, because no noise moves them over the digits'
     * edges. Only the repeatability is relied on to do so: scatter seen through coarse digits may be their own jumping.
     */
    public Covariance stayingInTheMean(Covariance digits) {
        double left = left(digits);
        return left == 0 ? Covariance.ZERO : digits.times(left * left);
    }

    private double left(Covariance digits) {
        double most = Math.sqrt(digits.uu() + digits.vv()); // in no direction more; finer digits leave less
        if (most == 0 || Dither.left(repeatability.sureUv(), most) == 0) {
            return 0;
        }
        return Dither.left(repeatability.sureUv(), digits.eigen().larger());
    }
}
