package covewalk.verdict.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.CctDuv;
import covewalk.colour.Covariance;
import covewalk.colour.NominalCct;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.survey.Reads;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
import covewalk.survey.StatedColour;
import covewalk.survey.Survey;
import covewalk.survey.Visit;
import covewalk.verdict.stretch.Line;
import covewalk.verdict.stretch.Noise;
import covewalk.verdict.stretch.Parts;
import covewalk.verdict.stretch.Repeatability;
import covewalk.verdict.stretch.Stretch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimsTest {

    private static final UvPrime CENTRE = NominalCct.of(ClaimCentre.EDITION, 2700).orElseThrow().centre().toUvPrime();
    private static final Reel CLAIMS_3 = reel(OptionalInt.of(2700), Optional.empty());

    @ParameterizedTest(name = "{5}")
    @CsvSource(textBlock = """
        # steps off, absoluteUv, reads, verdict,   why,           because
        0.5,         0.0003,     strip, shown,     none,          a meter good to 0.3 step and a reel near the centre
        5,           0.0003,     strip, not-shown, none,          the same meter and a reel two steps beyond its claim
        0.5,         0.0015,     strip, shown,     none,          'a handheld meter, good to 1.4 steps, shows it only so near the centre'
        1.5,         0.0015,     strip, unsettled, meter-error,   'half way to the edge it cannot'
        5,           0.0015,     strip, unsettled, meter-error,   'nor can it show that they are exceeded by 2'
        3,           0.0003,     strip, unsettled, near-the-edge, on the edge of the claim no meter settles it
        0.5,         0.0003,     wash,  unsettled, not-direct,    the paint tints what falls from a ceiling
        """)
    void saysWhatTheReadingsSupport(double steps, double absoluteUv, String reads, String verdict, String why, String because) {
        ReelClaim claim = judged(CLAIMS_3, steps, absoluteUv, Reads.of(reads).orElseThrow());
        assertEquals(verdict, claim.verdict().code());
        assertEquals(why, claim.why().code());
        assertEquals(steps, claim.measured().orElseThrow().steps(), 1e-9);
    }

    @Test
    void theCentreStatedGoesBeforeTheNominalOne() {
        Reel stated = reel(OptionalInt.of(2700), Optional.of(new StatedColour.ByCctDuv(new CctDuv(3000, 0))));
        assertEquals(ClaimVerdict.NOT_SHOWN, judged(stated, 0, 0.0003, Reads.STRIP).verdict());
        assertTrue(ClaimCentre.of(stated).orElseThrow().nominal().isEmpty());
    }

    @Test
    void withoutReadingsOrACentreThereIsNothingToSay() {
        Survey survey = survey(CLAIMS_3, 0.0003, Reads.STRIP);
        assertEquals(WhyOpen.NOT_READ, Claims.of(survey, List.of()).get(0).why());
        ReelClaim none = judged(reel(OptionalInt.of(2701), Optional.empty()), 0, 0.0003, Reads.STRIP);
        assertEquals(WhyOpen.NO_CENTRE, none.why());
        assertEquals(ClaimVerdict.NOT_READ, none.verdict());
    }

    @Test
    void theQuadrangleOfTheNominalCctIsJudgedBesideTheClaim() {
        ReelClaim claim = judged(CLAIMS_3, 4, 0.0003, Reads.STRIP);
        assertEquals(ClaimVerdict.NOT_SHOWN, claim.verdict());
        assertEquals(ClaimVerdict.SHOWN, claim.inQuadrangle(), "four steps off is well inside: it spans twelve along the locus");
        assertEquals(ClaimVerdict.NOT_SHOWN, judged(CLAIMS_3, 20, 0.0003, Reads.STRIP).inQuadrangle());
    }

    @Test
    void aClaimThatIsJustMetIsFoundOtherwiseNoMoreOftenThanTheErrorRate() {
        Random meter = new Random(106);
        int notShown = 0;
        int shown = 0;
        for (int i = 0; i < 4000; i++) {
            double angle = 2 * Math.PI * meter.nextDouble();
            UvPrime read = CENTRE.plus(3 * UvPrime.STEP * Math.cos(angle) + 0.0015 * meter.nextGaussian(),
                    3 * UvPrime.STEP * Math.sin(angle) + 0.0015 * meter.nextGaussian());
            ClaimVerdict verdict = Claims.of(survey(CLAIMS_3, 0.0015, Reads.STRIP), List.of(stretch(read))).get(0).verdict();
            notShown += verdict == ClaimVerdict.NOT_SHOWN ? 1 : 0;
            shown += verdict == ClaimVerdict.SHOWN ? 1 : 0;
        }
        assertTrue(notShown <= 200 && shown <= 200, notShown + " not shown, " + shown + " shown, of 4000");
        assertTrue(notShown > 60, "the rate is spent, not idle: " + notShown);
    }

    @ParameterizedTest(name = "{4}")
    @CsvSource(textBlock = """
        # first, second, steps, in u'v', source
        3,       3,      6,     0.0066,  '2 x 3 x 0.0011: the largest distance of two products each within 3 steps'
        2,       5,      7,     0.0077,  '(2 + 5) x 0.0011'
        """)
    void twoClaimsAboutOneCentreAllowTheirSum(double first, double second, double steps, double uvPrime, String source) {
        ClaimAllowance allowance = ClaimAllowance.between(claiming(first, 2700), claiming(second, 2700), StepRule.UV_CIRCLE).orElseThrow();
        assertEquals(steps, allowance.steps(), 1e-12);
        assertEquals(uvPrime, allowance.steps() * UvPrime.STEP, 1e-12);
        assertTrue(allowance.oneCentre());
    }

    @Test
    void centresThatDifferAllowTheirDistanceOnTop() {
        ClaimAllowance allowance = ClaimAllowance.between(claiming(3, 2700), claiming(3, 3000), StepRule.UV_CIRCLE).orElseThrow();
        UvPrime other = NominalCct.of(ClaimCentre.EDITION, 3000).orElseThrow().centre().toUvPrime();
        assertEquals(6 + CENTRE.stepsTo(other), allowance.steps(), 1e-9);
        assertFalse(allowance.oneCentre());
    }

    @Test
    void whoClaimsNothingAllowsNothing() {
        Reel silent = new Reel("R2", "", "", "", OptionalInt.of(2700), "", "", "", "", "", OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty());
        assertTrue(ClaimAllowance.between(CLAIMS_3, silent, StepRule.UV_CIRCLE).isEmpty());
    }

    private static ReelClaim judged(Reel reel, double stepsOff, double absoluteUv, Reads reads) {
        return Claims.of(survey(reel, absoluteUv, reads), List.of(stretch(CENTRE.plus(stepsOff * UvPrime.STEP, 0)))).get(0);
    }

    private static Reel claiming(double steps, int nominal) {
        return new Reel("R1", "", "", "", OptionalInt.of(nominal), "", "", "", "", "", OptionalDouble.empty(),
                OptionalDouble.of(steps), Optional.empty());
    }

    private static Reel reel(OptionalInt nominal, Optional<StatedColour> centre) {
        return new Reel("R1", "", "", "", nominal, "", "", "", "", "", OptionalDouble.empty(), OptionalDouble.of(3), centre);
    }

    private static Survey survey(Reel reel, double absoluteUv, Reads reads) {
        SetUp setUp = new SetUp("A", "", "", Optional.empty(), 0.0003, absoluteUv, 0, reads, 0, 100, Set.of());
        return new Survey(new Site("", ""), new Visit(Optional.empty(), "", Optional.empty(), OptionalInt.empty(), ""),
                List.of(setUp), new Limits(2, OptionalDouble.empty(), "", StepRule.UV_CIRCLE, 0.05, Limits.ErrorPer.JOINT),
                List.of(reel), List.of(), Optional.empty());
    }

    /** Its own noise is small beside the meter's: a tenth of a step. */
    private static Stretch stretch(UvPrime colour) {
        Parts parts = new Parts(Covariance.isotropic(0.0001), Covariance.ZERO, Covariance.ZERO, Covariance.ZERO);
        Placement placement = new Placement("R1", 0, 5, Placement.KnownFrom.SEEN, "");
        return new Stretch(placement, "A", 0, 5, new Stretch.Range(0, 0), List.of(), List.of(),
                new Line(2.5, colour, parts, 0, 0, Parts.NONE, Covariance.ZERO),
                new Noise(Repeatability.declared(SetUp.ASSUMED), Covariance.ZERO, Noise.Found.NOTHING));
    }
}
