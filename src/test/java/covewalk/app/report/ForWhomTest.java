package covewalk.app.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.desk.Desk;
import covewalk.report.Readership;
import covewalk.report.Readership.Reader;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForWhomTest {

    @TempDir
    Path folder;
    private Desk desk;
    private ForWhom model;

    @BeforeEach
    void aDossierIsWanted() {
        desk = DemoDesk.open(folder);
        model = new ForWhom(desk, desk.texts(ForWhom.class));
        model.readerProperty().set(Reader.WARRANTY);
    }

    private String chosen() {
        return model.chosen().flatMap(Readership::reel).map(Reel::id).orElse("");
    }

    private Reel withSerial() {
        return desk.survey().survey().reels().stream().filter(reel -> !reel.serial().isEmpty()).findFirst().orElseThrow();
    }

    @Test
    void beforeAnythingIsTypedReelsAtPlacesBeyondAreOffered() {
        assertEquals("Which reel is the dossier about?", model.saysProperty().get());
        assertTrue(model.offered().stream().map(Reel::id).toList().contains("R2"), model.offered().toString());
        assertEquals("", chosen());
    }

    @Test
    void takesAnIdOrASerial() {
        model.reelProperty().set("R2");
        assertEquals("R2", chosen());
        assertEquals("The dossier is about R2.", model.saysProperty().get());
        model.reelProperty().set(withSerial().serial());
        assertEquals(withSerial().id(), chosen());
    }

    /** An element string after the GS1 General Specifications: GTIN, then the serial behind 21. */
    @Test
    void takesAScannedLabel() {
        model.reelProperty().set("]d2" + "0100012345600012" + "21" + withSerial().serial());
        assertEquals(withSerial().id(), chosen());
    }

    @Test
    void aSerialOfSeveralIsAskedAbout() {
        desk.survey().change(survey -> survey.withReels(allWithSerial(survey, "S7")));
        model.follow();
        model.reelProperty().set("S7");
        assertTrue(model.saysProperty().get().startsWith("Several reels have this serial: R1, R2"), model.saysProperty().get());
        assertEquals("", chosen());
    }

    private static List<Reel> allWithSerial(Survey survey, String serial) {
        List<Reel> reels = new ArrayList<>();
        survey.reels().forEach(reel -> reels.add(new Reel(reel.id(), reel.maker(), reel.product(), reel.gtin(), reel.nominalCct(), reel.bin(),
                reel.lot(), serial, reel.made(), reel.invoice(), reel.lengthM(), reel.claimedSteps(), reel.claimedCentre())));
        return reels;
    }

    @Test
    void whatNoReelHasIsSaid() {
        model.reelProperty().set("R99");
        assertEquals("No reel has the id or serial R99.", model.saysProperty().get());
        assertEquals("", chosen());
    }

    @Test
    void otherReadersNeedNoReel() {
        model.readerProperty().set(Reader.SPECIFIER);
        assertEquals(Reader.SPECIFIER, model.chosen().orElseThrow().reader());
        assertEquals("", model.saysProperty().get());
    }
}
