package covewalk.words;

import covewalk.verdict.claim.ClaimAllowance;
import covewalk.verdict.claim.ClaimCentre;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.claim.WhyOpen;

/** Claims in words that say what was read, and not whose doing it is. */
public final class ClaimWords {

    private static final int LONGEST = 40;

    private final Words words;

    public ClaimWords(Words words) {
        this.words = words;
    }

    /** As "3 steps of 2700 K (ANSI C78.377-2015/2017)". */
    public String claim(ReelClaim claim) {
        return words.text("claim.of", words.numbers().plain(claim.claimedSteps(), 2),
                claim.centre().map(this::centre).orElseGet(() -> words.text("claim.centre.none")));
    }

    private String centre(ClaimCentre centre) {
        return centre.nominal().map(nominal -> words.text("claim.centre.nominal", words.numbers().fixed(nominal.nominalK(), 0),
                nominal.edition().years())).orElseGet(() -> words.text("claim.centre.stated"));
    }

    /** As "2.10 steps off, standard uncertainty 1.40"; says so where nothing was measured. */
    public String measured(ReelClaim claim) {
        return claim.measured().map(measured -> words.text(measured.varies() ? "claim.measured.varies" : "claim.measured",
                words.numbers().steps(measured.steps()), words.numbers().steps(measured.standardUncertaintySteps())))
                .orElseGet(() -> words.text("claim.measured.none"));
    }

    public String verdict(ReelClaim claim) {
        return words.text("claim.verdict." + claim.verdict().code());
    }

    /** Why it is open; nothing where it is settled. */
    public String why(WhyOpen why) {
        return why == WhyOpen.NONE ? "" : words.text("claim.why." + why.code());
    }

    /** Whether it lies in the quadrangle of its nominal CCT. */
    public String inQuadrangle(ClaimVerdict inQuadrangle) {
        return words.text("claim.class." + inQuadrangle.code());
    }

    /** The reel's id, short enough for a table. */
    public String reel(ReelClaim claim) {
        return Shortened.of(claim.reel().id(), LONGEST);
    }

    /** What two claims allow between neighbours; "or more" where a label does not say about which centre it claims. */
    public String allowance(ClaimAllowance allowance) {
        String key = allowance.oneCentre() ? "one-centre" : allowance.centresApartSteps().isPresent() ? "apart" : "two-centres";
        return words.text("reel.claims." + key, steps(allowance.firstSteps()), steps(allowance.secondSteps()),
                steps(allowance.steps()), words.numbers().steps(allowance.centresApartSteps().orElse(0)));
    }

    /** The same beside what was measured and the limit. */
    public String allowance(ClaimAllowance allowance, double measuredSteps, double limitSteps) {
        return words.text("claim.beside", allowance(allowance), words.numbers().steps(measuredSteps), steps(limitSteps));
    }

    private String steps(double steps) {
        return words.numbers().plain(steps, 2);
    }
}
