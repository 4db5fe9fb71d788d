package covewalk.verdict.claim;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.NominalCct;
import covewalk.colour.StepPlane;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.survey.Reel;
import java.util.Optional;

/**
 * The colour about which a label claims its steps.
 *
 * @param nominal the nominal CCT whose centre it is; empty where the label states a centre of its own
 */
public record ClaimCentre(UvPrime colour, Optional<NominalCct> nominal) {

    /** The edition whose centres and quadrangles are used. */
    public static final NominalCct.Edition EDITION = NominalCct.Edition.ANSI_2015_2017;

    /** The centre stated, else that of the nominal CCT; empty where the label has neither. */
    public static Optional<ClaimCentre> of(Reel reel) {
        if (reel.claimedCentre().isPresent()) {
            return Optional.of(new ClaimCentre(reel.claimedCentre().get().toUvPrime(), Optional.empty()));
        }
        return nominal(reel).map(nominal -> new ClaimCentre(nominal.centre().toUvPrime(), Optional.of(nominal)));
    }

    /** The nominal CCT on the label; empty where there is none or the edition does not have it. */
    static Optional<NominalCct> nominal(Reel reel) {
        return reel.nominalCct().isPresent() ? NominalCct.of(EDITION, reel.nominalCct().getAsInt()) : Optional.empty();
    }

    /** The plane in which steps about it are counted; circles where it has no CCT. */
    StepPlane plane(StepRule rule) {
        return ColourTemperature.of(colour) instanceof CctDuv white ? StepPlane.of(rule, white.cctK()) : StepPlane.circle();
    }
}
