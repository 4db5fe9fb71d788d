package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JointTest {

    private static Cove cove(boolean closed, Placement... placements) {
        return new Cove("C1", "", 10, closed, "", OptionalDouble.empty(), "", Optional.empty(), List.of(), List.of(placements));
    }

    private static Placement placed(String reel, double from, double to) {
        return new Placement(reel, from, to, Placement.KnownFrom.SEEN, "");
    }

    @Test
    void aJointStandsInTheMiddleOfItsGapWhateverTheOrderInTheFile() {
        Cove cove = cove(false, placed("R2", 5.2, 10), placed("R1", 0, 5));
        Joint joint = cove.joints().get(0);
        assertEquals("R1", joint.before().reel());
        assertEquals(5.1, joint.positionM(), 1e-12);
        assertEquals(0.2, joint.gapM(cove.lengthM()), 1e-12);
    }

    @Test
    void aClosedCoveHasOneJointMoreWhereItsEndsMeet() {
        Cove cove = cove(true, placed("R1", 0.1, 5), placed("R2", 5, 9.7));
        Joint closing = cove.joints().get(1);
        assertEquals(List.of("R2", "R1"), List.of(closing.before().reel(), closing.after().reel()));
        assertEquals(9.7, closing.positionM());
        assertEquals(0.4, closing.gapM(cove.lengthM()), 1e-12);
    }

    @Test
    void aReelThatClosesOnItselfHasAJointWithItself() {
        Joint joint = cove(true, placed("R1", 0, 10)).joints().get(0);
        assertEquals(joint.before(), joint.after());
    }

    @Test
    void whereTwoPlacementsMeetTheOneOnTheDatumsSideCounts() {
        Cove cove = cove(false, placed("R1", 0, 5), placed("R2", 5, 10));
        assertEquals("R1", cove.placementAt(5).orElseThrow().reel());
        assertEquals(Optional.empty(), cove.placementAt(10.5));
    }
}
