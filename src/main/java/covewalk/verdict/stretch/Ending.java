package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;

/**
 * The colour at an end of a stretch, whatever faint drift may be in it. A drift too faint to be shown may still put an
 * end off the colour of the whole by more than that colour's uncertainty. So the colour at an end is the mean of two:
 * that of a level stretch and that on a straight line, the line counting the more the less chance explains its slope;
 * and that nobody knows which of the two holds is counted too.
 *
 * @param line with the slope as far as it counts
 * @param doubt whether level or line holds: covariance of the slope, per m squared, in u', v'
 */
public record Ending(Line line, Covariance doubt) {

    /**
     * The weight of a level stretch against a line whose slope is 0. As large as the promise on joints allows for drifts
     * of every size (by simulation); with 0 the line alone would count, and flat reels would be settled less often.
     */
    private static final double LEVEL = 0.8;

    /** The same where the noise was estimated from few stations: a drift enlarges that estimate, which makes up for it. */
    private static final double LEVEL_OF_FEW = 4;

    /** What the slope of a level stretch adds to an end's variance, in the mean, as a share of a line's (by simulation). */
    public static final double USUAL_SHARE = 0.85;

    static Ending of(Line found) {
        return new Ending(found, Covariance.ZERO);
    }

    /**
     * @param line the straight line through a stretch that was taken to be level
     * @param degrees of freedom with which its noise was estimated
     */
    static Ending between(Line line, double degrees) {
        double significance = Significance.of(line.uPerM(), line.vPerM(), line.slopeParts().sum());
        double weight = 1 / (1 + (LEVEL + LEVEL_OF_FEW / degrees) * Math.exp(-significance / 2));
        double u = line.uPerM();
        double v = line.vPerM();
        Line counted = new Line(line.centreM(), line.centre(), line.centreParts(), weight * u, weight * v,
                line.slopeParts().times(weight), line.common());
        return new Ending(counted, new Covariance(u * u, u * v, v * v).times(weight * (1 - weight)));
    }

    public UvPrime at(double positionM) {
        return line.at(positionM);
    }

    /** What {@link #doubt} comes to at a position. */
    public Covariance doubtAt(double positionM) {
        double far = positionM - line.centreM();
        return doubt.times(far * far);
    }
}
