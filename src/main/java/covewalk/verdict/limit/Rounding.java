package covewalk.verdict.limit;

import covewalk.colour.Covariance;

/**
 * What coarse digits may hide of a difference, in the plane where one step is a circle. They do not vary like noise:
 * typed again they are the same again, so the farthest they may lie off is counted, and equal digits are no proof of
 * equal colours.
 *
 * @param one what the digits of one side leave open, steps squared
 * @param other and those of the other side
 */
public record Rounding(Covariance one, Covariance other) {

    /** Digits fine enough to average out. */
    public static final Rounding NONE = new Rounding(Covariance.ZERO, Covariance.ZERO);

    /**
     * A uniform number reaches the root of 3 times its standard deviation; two of them together, one for each number
     * typed, at most the root of 2 times more.
     */
    private static final double FARTHEST = Math.sqrt(6);

    /** How far a measured difference may lie off along a direction, steps. */
    public double reach(double first, double second) {
        return none() ? 0 : FARTHEST * (one.alongSd(first, second) + other.alongSd(first, second));
    }

    /** Whether there is none to reckon with. */
    public boolean none() {
        return one.uu() + one.vv() + other.uu() + other.vv() == 0;
    }
}
