package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A walk of reels alike, with a meter that drifts by four steps in 100 minutes, and what the commands say of it. */
class CorrectDriftTest {

    private static final String SAID = "readings were corrected for drift, linearly in time: 4 steps";

    private static final String ADVICE = "this drift can be taken off: in the window, and by check, punch and report with --correct-drift.";

    @TempDir
    Path folder;

    /** To and fro along each reel: walked straight on, a drift in time would look like one along the reel. */
    private static final int[] FIRST = {2, 4, 0, 5, 1, 3};
    private static final int[] SECOND = {3, 5, 1, 6, 0, 4, 2};

    /** By how much the second reel truly differs, steps. */
    private double apart = 0;

    private String drifting() throws IOException {
        SmallSurvey.in(folder, 0);
        StringBuilder log = new StringBuilder(SmallSurvey.HEADER);
        for (int minute = 0; minute <= 100; minute += 4) {
            if (minute % 20 == 0) {
                row(log, minute, 0.5, "reference");
                row(log, minute, 0.5, "reference");
            }
            if (minute < 24 || minute > 72) { // the second reel is read an hour after the first
                row(log, minute, minute < 24 ? 0.5 + FIRST[minute / 4] / 2.0 : 4.5 + SECOND[(minute - 76) / 4] / 2.0, "walk");
            }
        }
        Files.writeString(folder.resolve("readings.csv"), log.toString());
        return folder.toString();
    }

    private void row(StringBuilder log, int minute, double atM, String role) {
        int id = (int) log.chars().filter(c -> c == '\n').count();
        double u = 0.26 + 4 * 0.0011 * minute / 100 + (id % 2 == 0 ? 0.0001 : -0.0001) + (atM > 4 ? apart * 0.0011 : 0);
        log.append(String.format(Locale.ROOT, "%d,C1,%.2f,%s,,,,,,,%.5f,0.53000,,2026-10-12T%02d:%02d,,\n", id, atM, role, u,
                18 + minute / 60, minute % 60));
    }

    private static String inOneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void withoutItADriftOfTheMeterIsTakenForAStep() throws IOException {
        Run run = FrontDoor.run("check", drifting());

        assertEquals(1, run.code(), run.out());
        assertTrue(inOneLine(run.out()).contains("the reference spot at 0.50 m in cove C1 drifted by 4 steps"), run.out());
        assertTrue(inOneLine(run.out()).contains(ADVICE), run.out());
        assertFalse(run.out().contains(SAID), run.out());
    }

    @Test
    void withItTheStepIsGoneAndTheTableSaysSo() throws IOException {
        Run run = FrontDoor.run("check", drifting(), "--correct-drift");

        assertEquals("0 beyond, 0 unsettled, 1 within, 1 not read", run.lastLine());
        assertTrue(inOneLine(run.out()).contains("drifted by 4 steps"), run.out());
        assertTrue(inOneLine(run.out()).contains(SAID), run.out());
        assertFalse(inOneLine(run.out()).contains("--correct-drift"), "nobody is told to do what is done: " + run.out());
    }

    @Test
    void jsonAndExplanationNameTheCorrection() throws IOException {
        String survey = drifting();

        assertTrue(FrontDoor.run("check", survey, "--correct-drift", "--json").out().contains("\"drift-corrected\""));
        assertTrue(inOneLine(FrontDoor.run("check", survey, "--correct-drift", "--explain", "4").out()).contains(SAID));
    }

    @Test
    void everyFileOfTheReportNamesTheCorrection() throws IOException {
        apart = 6; // so that there is an item to put right
        String survey = drifting();
        byte[] log = Files.readAllBytes(folder.resolve("readings.csv"));
        Path out = folder.resolve("out");
        FrontDoor.run("report", survey, "--out", out.toString(), "--correct-drift");

        for (String file : List.of("punch-list.html", "punch-list.csv", "punch-list.json")) {
            assertTrue(Files.readString(out.resolve(file)).contains(SAID), file);
        }
        assertArrayEquals(log, Files.readAllBytes(folder.resolve("readings.csv")), "the readings stay as typed");
    }
}
