package covewalk.verdict.claim;

import covewalk.colour.UvPrime;
import covewalk.survey.Reel;
import covewalk.verdict.limit.Confidence;
import java.util.Optional;

/**
 * What a label claims, and what the readings say of it.
 *
 * @param reel with {@code claimedSteps}
 * @param centre about which it claims; empty where the label names none
 * @param measured the reel's colour and its distance from the centre; empty where it was not read or has no centre
 * @param confidence that it lies beyond its claim, and within
 * @param why where it is not settled
 * @param inQuadrangle whether it lies in the quadrangle of its nominal CCT: {@link ClaimVerdict#SHOWN} is in,
 *     {@link ClaimVerdict#NOT_SHOWN} out
 */
public record ReelClaim(Reel reel, Optional<ClaimCentre> centre, Optional<Measured> measured, Confidence confidence,
                        ClaimVerdict verdict, WhyOpen why, ClaimVerdict inQuadrangle) {

    public ReelClaim {
        if (reel.claimedSteps().isEmpty()) {
            throw new IllegalArgumentException("the label of reel " + reel.id() + " claims no steps");
        }
    }

    /** The steps claimed. */
    public double claimedSteps() {
        return reel.claimedSteps().orElseThrow();
    }

    /**
     * Where a reel was found to lie.
     *
     * @param setUp id of the set-up that knows it best
     * @param colour its mean over its placements
     * @param steps distance from the centre of the claim
     * @param standardUncertaintySteps of that distance, with the meter's own error (k = 1)
     * @param varies whether a change or drift was found inside the reel
     */
    public record Measured(String setUp, UvPrime colour, double steps, double standardUncertaintySteps, boolean varies) {
    }
}
