package covewalk.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import covewalk.colour.Xyz;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Station;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What weakens the evidence, and what of it is corrected. */
class EvidenceTest {

    private static final double QUIET = 0.0002;

    /** The first reel is read early, the second late; the two are of one colour. */
    private static EveningLog evening(long seed, double stepsAnHour) {
        return walked(new EveningLog(seed, QUIET, stepsAnHour));
    }

    private static EveningLog walked(EveningLog log) {
        return log.reference().walk(0.5, 4.5).at(45).reference().at(80).walk(5.5, 9.5).at(90).reference();
    }

    private static JudgedJoint joint(Judgement judgement) {
        return judgement.coves().get(0).joints().get(0);
    }

    @Test
    void aDriftingMeterMakesAFalseFaultThatTheCorrectionTakesAway() {
        EveningLog log = evening(2, 3);

        assertEquals(Verdict.BEYOND, joint(log.judged(false)).verdict());
        assertEquals(Verdict.WITHIN, joint(log.judged(true)).verdict());
        Difference left = joint(log.judged(true)).difference().orElseThrow();
        assertEquals(0, left.steps(), 3 * left.standardUncertaintySteps());
        assertEquals(List.of(), log.judged(true).coves().get(0).faults());
    }

    @Test
    void saysHowFarTheReferenceSpotDriftedInWhichTime() {
        List<String> found = evening(1, 3).noted(Note.Kind.REFERENCE_DRIFT, false).orElseThrow();

        assertEquals(List.of("A", "C1", "1.00"), found.subList(0, 3));
        assertEquals(4.5, Double.parseDouble(found.get(3)), 0.5);
        assertEquals(90.5, Double.parseDouble(found.get(4)), 0.5, "from the first reading to the last");
        assertTrue(found.get(5).contains("warmer"), found.get(5));
    }

    @Test
    void theCorrectionNamesItsSizeAndHowManyReadingsHadNoTime() {
        EveningLog log = evening(1, 3);
        log.clock = false;
        log.read(Role.WALK, 9.5);

        List<String> told = log.noted(Note.Kind.DRIFT_CORRECTED, true).orElseThrow();
        assertEquals("36", told.get(1));
        assertEquals(4.5, Double.parseDouble(told.get(2)), 0.5);
        assertEquals("1", told.get(5));
    }

    @Test
    void readingsStayAsTyped() {
        EveningLog log = evening(1, 3);
        List<Reading> typed = List.copyOf(log.log());

        List<Reading> judged = log.judged(true).coves().get(0).stations().stream().flatMap(s -> s.readings().stream()).toList();
        assertTrue(typed.containsAll(judged));
    }

    @Test
    void whatTheCorrectionLeavesOpenStandsInTheBudget() {
        Budget budget = joint(evening(1, 3).judged(true)).budget();

        assertTrue(budget.entries().stream().anyMatch(entry -> entry.part() == Budget.Part.DRIFT_CORRECTION));
        assertEquals(joint(evening(1, 3).judged(true)).difference().orElseThrow().standardUncertaintySteps(), budget.wholeSteps(), 1e-6);
    }

    @Test
    void nothingIsCorrectedUnlessAskedOrWhereNothingDrifts() {
        assertEquals(Optional.empty(), evening(1, 3).noted(Note.Kind.DRIFT_CORRECTED, false));
        assertEquals(Optional.of(List.of("A")), evening(1, 0).noted(Note.Kind.DRIFT_NOT_CORRECTED, true));
    }

    @Test
    void thatADriftCanBeTakenOffIsSaidOnlyWhereItIsLeftInAndHasTimes() {
        assertEquals(Optional.of(List.of("A")), evening(1, 3).noted(Note.Kind.DRIFT_CORRECTABLE, false));
        assertEquals(Optional.empty(), evening(1, 3).noted(Note.Kind.DRIFT_CORRECTABLE, true));
        assertEquals(Optional.empty(), evening(1, 0).noted(Note.Kind.DRIFT_CORRECTABLE, false));
        EveningLog untimed = new EveningLog(2, QUIET, 3);
        untimed.clock = false;
        walked(untimed);
        assertEquals(Optional.empty(), untimed.noted(Note.Kind.DRIFT_CORRECTABLE, false));
    }

    @Test
    void withoutTimesADriftIsSeenInTheOrderOfReadingAndNotCorrected() {
        EveningLog log = new EveningLog(2, QUIET, 3);
        log.clock = false;
        walked(log);

        assertEquals("A", log.noted(Note.Kind.REFERENCE_DRIFT_BY_ORDER, true).orElseThrow().get(0));
        assertEquals(Optional.of(List.of("A")), log.noted(Note.Kind.DRIFT_NOT_CORRECTED, true));
    }

    @Test
    void saysWhereDriftCannotBeSeen() {
        assertTrue(new EveningLog(3, QUIET, 0).walk(0.5, 9.5).noted(Note.Kind.DRIFT_NOT_SEEN, false).isPresent(), "no spot");
        assertTrue(new EveningLog(3, QUIET, 0).reference().walk(0.5, 9.5).reference()
                .noted(Note.Kind.DRIFT_NOT_SEEN, false).isPresent(), "two visits");
        assertTrue(new EveningLog(3, QUIET, 0).reference().walk(0.5, 1).reference().walk(1.5, 2).reference().walk(2.5, 9.5)
                .walk(0.5, 9.5).noted(Note.Kind.DRIFT_NOT_SEEN, false).isPresent(), "none at the end");
        assertEquals(Optional.empty(), evening(3, 0).noted(Note.Kind.DRIFT_NOT_SEEN, false));
    }

    @Test
    void aSteadyMeterIsSaidToDriftInOneWalkOfTwentyAtMost() {
        int walks = 400;
        long alarms = 0;
        for (int seed = 0; seed < walks; seed++) {
            alarms += evening(seed, 0).noted(Note.Kind.REFERENCE_DRIFT, false).isPresent() ? 1 : 0;
        }
        assertTrue(alarms <= 0.05 * walks + 3 * Math.sqrt(0.05 * 0.95 * walks), alarms + " of " + walks);
    }

    @Test
    void takesForeignLightOffAsTristimulusValues() {
        EveningLog log = new EveningLog(4, 0, 0);
        log.lux = Optional.of("500");
        log.light = mixed(500, 0.05);
        log.walk(0.5, 1.5);
        log.lux = Optional.of("25");
        log.light = new Xy(0.3127, 0.3290).toUvPrime(); // D65, IEC 61966-2-1
        log.read(Role.DARK, 1);
        List<Station> stations = log.judged(false).coves().get(0).stations();

        assertEquals(0, stations.get(1).mean().stepsTo(EveningLog.WHITE), 0.03, "to the digits typed");
        assertTrue(stations.get(0).mean().stepsTo(EveningLog.WHITE) > 2, "nobody read this spot in the dark");
        assertEquals(Optional.of(List.of("A", "2", "5.00")), log.noted(Note.Kind.DARK_SUBTRACTED, false));
    }

    /** The cove's white with a share of daylight in it, by CIE 15: tristimulus values add. */
    private static UvPrime mixed(double lux, double daylight) {
        Xy cove = EveningLog.WHITE.toXy();
        double day = lux * daylight;
        double lit = lux - day;
        return new Xyz(lit * cove.x() / cove.y() + day * 0.3127 / 0.3290, lux,
                lit * (1 - cove.x() - cove.y()) / cove.y() + day * (1 - 0.3127 - 0.3290) / 0.3290).chromaticity().toUvPrime();
    }

    @Test
    void leavesLittleForeignLightAloneAndSaysWhereLuxIsMissing() {
        EveningLog little = new EveningLog(5, QUIET, 0);
        little.lux = Optional.of("1000");
        little.walk(0.5, 1.5);
        little.lux = Optional.of("1.9");
        little.read(Role.DARK, 1);
        assertEquals(Optional.empty(), little.noted(Note.Kind.DARK_SUBTRACTED, false));

        EveningLog none = new EveningLog(5, QUIET, 0).walk(0.5, 1.5).read(Role.DARK, 1);
        assertEquals(Optional.of(List.of("A", "2")), none.noted(Note.Kind.DARK_WITHOUT_LUX, false));
    }

    @Test
    void saysWhereHalfTheLightIsForeign() {
        EveningLog log = new EveningLog(6, QUIET, 0);
        log.lux = Optional.of("10");
        log.walk(0.5, 1).read(Role.DARK, 1);
        assertEquals(Optional.of(List.of("A", "2")), log.noted(Note.Kind.DARK_SWAMPS, false));
    }

    @Test
    void countsReadingsBelowTheMetersRange() {
        EveningLog log = new EveningLog(7, QUIET, 0);
        log.leastLux = OptionalDouble.of(5);
        log.lux = Optional.of("4.9");
        log.walk(0.5, 1);
        log.lux = Optional.of("5.0");
        log.walk(1.5, 2);
        assertEquals(Optional.of(List.of("A", "4", "5.0")), log.noted(Note.Kind.BELOW_RANGE, false));
    }

    @Test
    void saysWhereNobodyNotedHowLongTheLightWasOn() {
        EveningLog log = new EveningLog(8, QUIET, 0).walk(0.5, 1);
        log.minutesOn = OptionalInt.empty();
        assertTrue(log.noted(Note.Kind.WARM_UP_UNKNOWN, false).isPresent());
    }

    @Test
    void sidesReadWithDifferentSetUpsAreNotCompared() {
        EveningLog log = new EveningLog(9, QUIET, 0).walk(0.5, 4.5);
        log.setUp = "B";
        log.walk(5.5, 9.5);

        assertEquals(Verdict.NOT_READ, joint(log.judged(false)).verdict());
        assertEquals(Settle.WhyNot.DIFFERENT_SETUPS, joint(log.judged(false)).settle().whyNot());
        assertEquals(Optional.of(List.of("C1")), log.noted(Note.Kind.SEVERAL_SETUPS, false));
    }

    @Test
    void saysWhereRepeatsAreNotAsDeclared() {
        EveningLog noisy = new EveningLog(10, 0.0006, 0).walk(0.5, 9.5);
        assertEquals("0.27", noisy.noted(Note.Kind.NOISIER_THAN_DECLARED, false).orElseThrow().get(2));
        EveningLog quiet = new EveningLog(11, 0.0001, 0).walk(0.5, 9.5);
        assertEquals(0.09, Double.parseDouble(quiet.noted(Note.Kind.QUIETER_THAN_DECLARED, false).orElseThrow().get(1)), 0.03);
    }
}
