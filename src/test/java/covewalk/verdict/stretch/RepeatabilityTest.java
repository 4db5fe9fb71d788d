package covewalk.verdict.stretch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RepeatabilityTest {

    /** GUM (JCGM 100:2008) H.5, table H.9: standard deviations of five readings on each of ten days, uV. */
    private static final int[] DAILY = {60, 77, 111, 101, 67, 93, 80, 73, 88, 86};
    /** Its pooled within-day standard deviation, uV. */
    private static final double POOLED = 85;

    /** Five readings at a place, whose standard deviation is given in millionths. */
    private static List<Reading> five(int place, int millionths) {
        List<Reading> readings = new ArrayList<>();
        for (int i = -2; i <= 2; i++) {
            double off = i / Math.sqrt(2.5) * millionths * 1e-6; // -2, -1, 0, 1, 2 have a standard deviation of sqrt 2.5
            readings.add(new Reading(place + "-" + i, "C1", typed(place), Role.WALK, "A", 1,
                    Optional.of(TypedColour.ofUvPrime(typed(0.26 + off), typed(0.53 - off))), Optional.empty(), "", "", "", 0));
        }
        return readings;
    }

    private static Typed typed(double value) {
        return Typed.of(String.format(Locale.ROOT, "%.10f", value)).orElseThrow();
    }

    private static SetUp declaring(double uv) {
        SetUp usual = SetUp.ASSUMED;
        return new SetUp("A", "", "", Optional.empty(), uv, usual.absoluteUv(), usual.unlikeUv(), usual.reads(), 0, 100, Set.of());
    }

    private static Repeatability pooled(double declaredUv) {
        List<Reading> readings = new ArrayList<>();
        for (int day = 0; day < DAILY.length; day++) {
            readings.addAll(five(day, DAILY[day]));
        }
        return Repeatability.of(Stations.of(readings, ColourOf.AS_TYPED), declaring(declaredUv));
    }

    @Test
    void poolsRepeatsAsTheGuideDoesWithinDays() {
        Repeatability found = pooled(POOLED * 1e-6);

        assertEquals(POOLED * 1e-6, found.repeats().uv(), 0.5e-6);
        assertEquals(40, found.repeats().count());
        assertEquals(Repeatability.Against.AS_DECLARED, found.against());
    }

    @Test
    void saysWhereRepeatsAreNotAsDeclared() {
        assertEquals(Repeatability.Against.NOISIER, pooled(40e-6).against());
        assertEquals(Repeatability.Against.QUIETER, pooled(200e-6).against());
    }
}
