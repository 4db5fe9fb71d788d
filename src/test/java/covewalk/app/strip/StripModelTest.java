package covewalk.app.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.desk.Desk;
import covewalk.app.desk.Spot;
import covewalk.plot.Shape;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On the demonstration survey: cove C1 has joints at 5, 10 and 15 m, C2 is a ring of 25 m. */
class StripModelTest {

    /** The strip of a picture 210 mm wide lies between 5 and 205 mm, so that 20 m are 10 mm a metre. */
    private static final double WIDTH_MM = 210;

    @TempDir
    Path folder;
    private Desk desk;
    private StripModel model;

    @BeforeEach
    void open() {
        desk = DemoDesk.open(folder);
        model = new StripModel(desk);
        model.widthMm(WIDTH_MM);
    }

    private static double c1(double positionM) {
        return 5 + positionM * 10;
    }

    @Test
    void showsTheFirstCoveUntilAnotherPlaceIsLookedAt() {
        assertEquals("C1", model.coveProperty().get().cove().id());
        assertEquals("C1, Ground floor, entrance hall, along the long wall · 0 = street door, left jamb", model.nameProperty().get());
        desk.spotProperty().set(new Spot("C3", 21));
        assertEquals("C3", model.coveProperty().get().cove().id());
    }

    @Test
    void saysWhatIsPointedAtWithItsNumbers() {
        model.point(c1(5.2));
        assertTrue(model.saysProperty().get().startsWith("Joint at 5.00 m, R1 | R2: beyond. 3.41 steps (standard uncertainty "), model.saysProperty().get());
        model.point(c1(2.5));
        assertTrue(model.saysProperty().get().startsWith("Reel R1, 0.00 m to 5.00 m: one colour from 6 stations"), model.saysProperty().get());
    }

    @Test
    void sayAlsoOverWhichLengthAFaultSpreads() {
        model.point(c1(19.5));
        assertTrue(model.saysProperty().get().contains("Drift along a reel, 15.00 m to 20.00 m, R4: beyond."), model.saysProperty().get());
    }

    @Test
    void whenNobodyPointsItSaysWhatIsLookedAt() {
        String before = model.saysProperty().get();
        model.point(c1(5));
        model.leave();
        assertEquals(before, model.saysProperty().get());
        desk.spotProperty().set(new Spot("C1", 15));
        assertTrue(model.saysProperty().get().startsWith("Joint at 15.00 m"), model.saysProperty().get());
    }

    @Test
    void aTapLooksAtTheJointThatAGloveMeans() {
        model.tap(c1(9.7));
        assertEquals(new Spot("C1", 10), desk.spotProperty().get());
        model.tap(c1(12.5));
        assertEquals("C1", desk.spotProperty().get().cove());
        assertEquals(12.5, desk.spotProperty().get().positionM(), 1e-9);
        assertEquals(c1(12.5), model.spotMmProperty().get(), 1e-9);
    }

    @Test
    void theClosingJointOfARingIsFoundAtBothItsEnds() {
        desk.spotProperty().set(new Spot("C2", 12));
        model.tap(5.5);
        assertEquals(new Spot("C2", 25), desk.spotProperty().get());
    }

    @Test
    void stepsFromJointToJointAndBack() {
        model.step(true);
        assertEquals(new Spot("C1", 5), desk.spotProperty().get());
        model.step(true);
        assertEquals(new Spot("C1", 10), desk.spotProperty().get());
        model.step(false);
        assertEquals(new Spot("C1", 5), desk.spotProperty().get());
        model.step(false);
        assertEquals(new Spot("C1", 5), desk.spotProperty().get(), "before the first there is none");
    }

    @Test
    void goesRoundTheCoves() {
        model.otherCove(false);
        assertEquals("C5", model.coveProperty().get().cove().id());
        model.otherCove(true);
        assertEquals("C1", model.coveProperty().get().cove().id());
    }

    @Test
    void showsDifferencesAsLargeAsChosenUntilToldToFitAgain() {
        int fits = model.timesShownProperty().get();
        model.timesProperty().set(3);
        assertEquals(3, model.timesShownProperty().get());
        model.otherCove(true);
        assertEquals(3, model.timesShownProperty().get(), "so that coves can be compared");
        model.otherCove(false);
        model.timesProperty().set(0);
        assertEquals(fits, model.timesShownProperty().get());
    }

    @Test
    void followsTheUnitChosen() {
        desk.choose(desk.settings().withFeet(true));
        assertTrue(model.pictureProperty().get().shapes().stream().anyMatch(shape -> shape instanceof Shape.Text text && text.text().equals("10 ft")));
        model.point(c1(5));
        assertTrue(model.saysProperty().get().startsWith("Joint at 16 ft 4 3/4 in"), model.saysProperty().get());
    }

    @Test
    void followsReadingsThatComeIn() {
        int stations = model.coveProperty().get().stations().size();
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        assertEquals(stations + 1, model.coveProperty().get().stations().size());
    }

    @Test
    void withoutASurveyThereIsNothingToDrawAndNothingBreaks() {
        StripModel empty = new StripModel(DemoDesk.empty());
        empty.point(20);
        empty.tap(20);
        empty.step(true);
        empty.otherCove(true);
        assertNull(empty.pictureProperty().get());
        assertEquals("", empty.saysProperty().get());
    }

    @Test
    void diagramsAreOfTheSameCove() {
        DiagramsModel diagrams = new DiagramsModel(desk);
        assertNotNull(diagrams.profileProperty().get());
        desk.spotProperty().set(new Spot("C2", 5));
        assertTrue(diagrams.profileProperty().get().says().contains("C2"), diagrams.profileProperty().get().says());
    }
}
