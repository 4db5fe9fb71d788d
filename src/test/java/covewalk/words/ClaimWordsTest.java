package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.Reel;
import covewalk.verdict.claim.ClaimAllowance;
import covewalk.verdict.claim.ClaimCentre;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.claim.WhyOpen;
import covewalk.verdict.limit.Confidence;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ClaimWordsTest {

    private final ClaimWords words = new ClaimWords(Words.english());

    @Test
    void namesTheCentreAndTheEditionItIsTakenFrom() {
        assertEquals("3 steps of 2700 K (ANSI C78.377-2015/2017)", words.claim(claim(OptionalInt.of(2700))));
        assertEquals("3 steps of a centre not named", words.claim(claim(OptionalInt.empty())));
    }

    @Test
    void setsTheSumOfTheClaimsBesideWhatWasMeasuredAndTheLimit() {
        assertEquals("The labels claim 3 and 3 steps about one centre. Both can be true with up to 6 steps between the two reels."
                + " Measured here: 3.40; the limit is 2.", words.allowance(new ClaimAllowance(3, 3, OptionalDouble.of(0)), 3.4, 2));
    }

    @Test
    void addsTheDistanceOfTheCentresWhereTheyDifferAndSaysMoreWhereTheyAreNotNamed() {
        assertEquals("The labels claim 3 and 2 steps about centres 1.20 steps apart. Both can be true with up to 6.2 steps between"
                + " the two reels.", words.allowance(new ClaimAllowance(3, 2, OptionalDouble.of(1.2))));
        assertEquals("The labels claim 3 and 2 steps, not about one stated centre. Both can be true with 5 steps between the two"
                + " reels, or more.", words.allowance(new ClaimAllowance(3, 2, OptionalDouble.empty())));
    }

    private static ReelClaim claim(OptionalInt nominal) {
        Reel reel = new Reel("R1", "", "", "", nominal, "", "", "", "", "", OptionalDouble.empty(), OptionalDouble.of(3), Optional.empty());
        return new ReelClaim(reel, ClaimCentre.of(reel), Optional.empty(), Confidence.NONE, ClaimVerdict.NOT_READ, WhyOpen.NOT_READ,
                ClaimVerdict.NOT_READ);
    }
}
