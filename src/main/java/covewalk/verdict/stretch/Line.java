package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;

/**
 * The colour of a stretch along its length: one colour, or a straight line in u', v'.
 *
 * @param centreM the weighted mean of the stations' positions, m, where the colour is best known
 * @param centre the colour there
 * @param centreParts uncertainty of the colour there
 * @param uPerM slope of u' per m; 0 where the stretch is of one colour
 * @param vPerM slope of v' per m
 * @param slopeParts uncertainty of the slopes, per m squared
 * @param common what is common to all its readings and does not average out, in u', v'
 */
public record Line(double centreM, UvPrime centre, Parts centreParts, double uPerM, double vPerM, Parts slopeParts,
                   Covariance common) {

    public boolean drifts() {
        return uPerM != 0 || vPerM != 0;
    }

    public UvPrime at(double positionM) {
        return drifts() ? centre.plus(uPerM * (positionM - centreM), vPerM * (positionM - centreM)) : centre;
    }

    /** Uncertainty of the colour at a position, without the part that is common to all its readings. */
    public Parts shrinkingAt(double positionM) {
        return centreParts.plus(slopePartsAt(positionM));
    }

    /** What of that the slope leaves open, carried on from the centre. */
    public Parts slopePartsAt(double positionM) {
        double far = positionM - centreM;
        return slopeParts.times(far * far);
    }
}
