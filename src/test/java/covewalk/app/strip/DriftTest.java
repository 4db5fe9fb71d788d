package covewalk.app.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.DriftingSurvey;
import covewalk.app.Screens;
import covewalk.app.desk.Desk;
import covewalk.verdict.limit.Verdict;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DriftTest {

    @TempDir
    Path folder;
    private Desk desk;
    private Drift drift;

    @BeforeEach
    void aMeterThatDrifts() throws IOException {
        desk = DemoDesk.empty();
        open(DriftingSurvey.in(folder.resolve("drifting")));
        drift = new Drift(desk);
    }

    private void open(Path survey) {
        desk.open(survey, refused -> {
            throw new AssertionError(refused);
        });
    }

    private long beyond() {
        return desk.survey().judgementProperty().get().count(Verdict.BEYOND);
    }

    @Test
    void isSaidAndLeftInUntilSomebodyChooses() {
        assertTrue(drift.saysProperty().get().matches("The reference spot drifted by (3\\.9|4|4\\.0)\\d? steps in 100 minutes \\(set-up A\\)\\."
                + " The verdicts have that drift in them\\."), drift.saysProperty().get());
        assertFalse(drift.takenOffProperty().get());
        assertEquals(1, beyond());
    }

    @Test
    void takenOffTheVerdictsAreOfReelsAlikeAndSaySo() {
        StripModel strip = new StripModel(desk);
        drift.takeOff(true);
        assertEquals(0, beyond());
        assertTrue(drift.saysProperty().get().startsWith("Corrected for drift: "), drift.saysProperty().get());
        assertTrue(strip.nameProperty().get().endsWith(" · corrected for drift"), strip.nameProperty().get());
        drift.takeOff(false);
        assertFalse(strip.nameProperty().get().contains("drift"), strip.nameProperty().get());
        assertEquals(1, beyond());
    }

    @Test
    void whatWasChosenHoldsWhenTheSurveyIsOpenedAgainAndForThatSurveyAlone() {
        drift.takeOff(true);
        open(Screens.demo(folder));
        assertFalse(drift.takenOffProperty().get());
        assertEquals("", drift.saysProperty().get());
        open(folder.resolve("drifting"));
        assertTrue(drift.takenOffProperty().get());
        assertEquals(0, beyond());
    }

    @Test
    void whereNothingDriftsACorrectionSaysThatThereIsNone() {
        open(Screens.demo(folder));
        desk.survey().correctDriftProperty().set(true);
        assertEquals("No drift is taken off: no reference spot with times shows one.", drift.saysProperty().get());
    }
}
