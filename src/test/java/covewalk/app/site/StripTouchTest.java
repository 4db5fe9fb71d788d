package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import covewalk.survey.Cove;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StripTouchTest {

    @TempDir
    Path folder;
    private SiteModel model;
    private StripTouch touch;

    @BeforeEach
    void lookAtTheFirstCove() {
        Desk desk = Desks.withDemo(folder);
        model = new SiteModel(desk);
        model.sectionProperty().set(Section.cove(0));
        touch = model.touch();
    }

    private Cove cove() {
        return model.cove().cove().orElseThrow();
    }

    private List<String> lies() {
        return cove().placements().stream().map(placement -> placement.reel() + " " + placement.fromM() + "-" + placement.toM()).toList();
    }

    private double mm(double atM) {
        return CoveDrawing.x(cove(), atM);
    }

    private void drag(double fromM, double toM) {
        touch.press(mm(fromM));
        touch.drag(mm((fromM + toM) / 2));
        touch.drag(mm(toM));
        touch.release(mm(toM));
    }

    private void tap(double atM) {
        touch.press(mm(atM));
        touch.release(mm(atM));
    }

    @Test
    void aJointIsDraggedWithBothItsEnds() {
        drag(5.1, 4.52);
        assertEquals(List.of("R1 0.0-4.5", "R2 4.5-10.0"), lies().subList(0, 2));
    }

    @Test
    void aJointStopsAtItsNeighbours() {
        drag(5, 14);
        assertEquals(List.of("R1 0.0-9.99", "R2 9.99-10.0", "R3 10.0-15.0"), lies().subList(0, 3));
    }

    @Test
    void theEndIsDraggedByItself() {
        drag(20, 18.3);
        assertEquals("R4 15.0-18.3", lies().get(3));
        drag(18.3, 30);
        assertEquals("R4 15.0-20.0", lies().get(3));
    }

    @Test
    void aTouchThatHardlyMovesChoosesAndMovesNothing() {
        tap(7);
        assertEquals(1, model.cove().placements().chosenProperty().get());
        touch.press(mm(5));
        touch.drag(mm(5) + 0.5);
        touch.release(mm(5) + 0.5);
        assertEquals("R1 0.0-5.0", lies().get(0));
    }

    @Test
    void aTapAddsAJointAndAFeed() {
        touch.tapProperty().set(StripTouch.Tap.JOINT);
        tap(7.52);
        assertEquals(List.of("R2 5.0-7.5", "R20 7.5-10.0"), lies().subList(1, 3));
        touch.tapProperty().set(StripTouch.Tap.FEED);
        tap(19.98);
        assertEquals(20.0, cove().feeds().get(3).atM());
        assertEquals(3, model.cove().feeds().chosenProperty().get());
    }

    @Test
    void aJointWhereOneIsAlreadyIsSaid() {
        touch.tapProperty().set(StripTouch.Tap.JOINT);
        tap(5);
        assertEquals(4, lies().size());
        assertTrue(model.lay().troubleProperty().get().contains("already"), model.lay().troubleProperty().get());
    }

    @Test
    void theDrawingSaysTheSameInWords() {
        assertEquals("The cove along its length, with 4 placements; the list below says the same.", touch.pictureProperty().get().says());
    }
}
