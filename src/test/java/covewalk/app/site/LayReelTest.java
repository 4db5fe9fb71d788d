package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import covewalk.survey.Cove;
import covewalk.survey.Placement.KnownFrom;
import covewalk.survey.Reel;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LayReelTest {

    @TempDir
    Path folder;
    private Desk desk;
    private SiteModel model;
    private LayReel lay;

    @BeforeEach
    void beginACoveOfTwelveAndAHalfMetres() {
        desk = Desks.withDemo(folder);
        model = new SiteModel(desk);
        model.addCove();
        model.cove().form().line("lengthM").textProperty().set("12.5");
        model.cove().form().takeAll();
        lay = model.lay();
    }

    private Cove cove() {
        return model.cove().cove().orElseThrow();
    }

    private List<String> lies() {
        return cove().placements().stream().map(placement -> placement.reel() + " " + placement.fromM() + "-" + placement.toM()).toList();
    }

    private boolean type(String reel, String end) {
        lay.reelProperty().set(reel);
        lay.endProperty().set(end);
        return lay.lay();
    }

    @Test
    void nothingButEnterLaysReelAfterReelToTheEndOfTheCove() {
        assertEquals("Enter lays the new reel R20 from 0 m to 5 m.", lay.saysProperty().get());
        assertTrue(lay.lay() && lay.lay() && lay.lay());
        assertEquals(List.of("R20 0.0-5.0", "R21 5.0-10.0", "R22 10.0-12.5"), lies());
        assertTrue(lay.fullProperty().get());
        assertFalse(lay.lay());
        assertEquals(KnownFrom.ASSUMED, cove().placements().get(0).knownFrom());
    }

    @Test
    void aScannedLabelBecomesAReelWithItsLengthAndIsFoundAgain() {
        String label = "]d20109501101530003112607003111000040240LINEA-24\u001d10AB-1\u001d21S77";
        type(label, "");
        Reel reel = desk.survey().survey().reel("R20").orElseThrow();
        assertEquals(List.of("09501101530003", "AB-1", "S77", "LINEA-24", "2026-07"),
                List.of(reel.gtin(), reel.lot(), reel.serial(), reel.product(), reel.made()));
        type("https://id.gs1.org/01/09501101530003/21/S77", "9");
        assertEquals(List.of("R20 0.0-4.0", "R20 4.0-9.0"), lies());
        assertEquals(KnownFrom.SEEN, cove().placements().get(0).knownFrom());
    }

    @Test
    void aNameOnTapeIsAReelsNameAndALongTextItsSerial() {
        type("B 12", "2");
        type("http://brand.example/label?sn=9938271", "4");
        assertEquals(List.of("B 12 0.0-2.0", "R21 2.0-4.0"), lies());
        assertEquals("http://brand.example/label?sn=9938271", desk.survey().survey().reel("R21").orElseThrow().serial());
    }

    @Test
    void anOddLabelIsTakenAndTheOddThingSaid() {
        type("(01)09501101530004(21)S1", "");
        assertEquals(1, lies().size());
        assertTrue(lay.troubleProperty().get().contains("check digit"), lay.troubleProperty().get());
    }

    @Test
    void labelsOfTheSurveyAreOfferedWhileTyping() {
        lay.reelProperty().set("2618-t");
        assertEquals(List.of("R18", "R19"), lay.offered().stream().map(Reel::id).toList());
        lay.pick(lay.offered().get(1));
        assertEquals("Enter lays reel R19 from 0 m to 5 m.", lay.saysProperty().get());
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "0", "-1", "99", "1e99"})
    void anEndThatCannotBeIsSaidAndWhatWasTypedStays(String end) {
        assertFalse(type("X", end));
        assertFalse(lay.troubleProperty().get().isEmpty());
        assertEquals("X", lay.reelProperty().get());
        assertEquals(List.of(), lies());
    }
}
