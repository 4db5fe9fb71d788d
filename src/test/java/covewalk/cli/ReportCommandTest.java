package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {

    @TempDir
    Path folder;
    private Path survey;
    private Path out;

    @BeforeEach
    void aSurveyWithOneJointBeyond() throws IOException {
        survey = SmallSurvey.in(folder.resolve("survey-of-the-hall"), 5);
        out = folder.resolve("made").resolve("deep");
    }

    private Run report() {
        return FrontDoor.run("report", survey.toString(), "--out", out.toString());
    }

    @Test
    void writesThePunchListAndSaysWhere() throws IOException {
        Run run = report();
        assertEquals(List.of("punch-list.csv", "punch-list.html", "punch-list.json", "punch-list.pdf"), SmallSurvey.files(out), run.err());
        for (String file : SmallSurvey.files(out)) {
            assertTrue(run.out().contains("Wrote " + out.resolve(file) + "\n"), run.out());
        }
        assertEquals("1 beyond, 0 unsettled, 1 within, 0 not read", run.lastLine());
        assertEquals(1, run.code());
    }

    @Test
    void sealsTheSurveyOnceForTheSameEvidence() throws IOException {
        Run first = report();
        String seal = Files.readString(survey.resolve("seal.json"));
        Run second = report();
        assertEquals(first, second);
        assertEquals(seal, Files.readString(survey.resolve("seal.json")));
        String code = first.out().lines().filter(line -> line.startsWith("Sealed: ")).findFirst().orElseThrow().substring(8);
        assertTrue(seal.contains(code), seal);
        assertTrue(Files.readString(out.resolve("punch-list.html")).contains(code));
    }

    @Test
    void addsNothingToTheSurveyButTheSeal() throws IOException {
        report();
        assertEquals(List.of("readings.csv", "seal.json", "survey.json"), SmallSurvey.files(survey));
    }

    @Test
    void theSameSurveyGivesTheSameFilesWhereverItLies() throws IOException {
        report();
        Path otherOut = folder.resolve("other");
        FrontDoor.run("report", SmallSurvey.in(folder.resolve("moved"), 5).toString(), "--out", otherOut.toString());
        for (String file : SmallSurvey.files(out)) {
            assertArrayEquals(Files.readAllBytes(out.resolve(file)), Files.readAllBytes(otherOut.resolve(file)), file);
            assertFalse(Files.readString(out.resolve(file), StandardCharsets.ISO_8859_1).contains("survey-of-the-hall"), file);
        }
    }

    /** A folder where the new seal is first written stands for a folder that may not be written, which some accounts always may. */
    @Test
    void aSurveyThatCannotBeWrittenIsReportedWithoutASeal() throws IOException {
        Files.createDirectory(survey.resolve("seal.json.new"));
        Run run = report();
        assertTrue(run.err().startsWith("The report is not sealed, since the survey's folder could not be written: "), run.err());
        assertFalse(run.out().contains("Sealed"), run.out());
        assertEquals(4, SmallSurvey.files(out).size());
        assertEquals(1, run.code());
    }

    @Test
    void sealsThatCannotBeReadAreLeftAsTheyAre() throws IOException {
        Files.writeString(survey.resolve("seal.json"), "{ torn");
        Run run = report();
        assertTrue(run.err().contains("The report is not sealed, since the seals that are there cannot be read."), run.err());
        assertEquals("{ torn", Files.readString(survey.resolve("seal.json")));
        assertFalse(run.out().contains("Sealed"), run.out());
        assertEquals(1, run.code());
    }

    @Test
    void aFileGivenAsFolderIsRefusedBeforeAnythingIsSealed() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
        Run run = FrontDoor.run("report", survey.toString(), "--out", file.toString());
        assertEquals("notes.txt is a file. Give a folder after --out; it is made where it is missing.\n", run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(survey.resolve("seal.json")));
    }

    @Test
    void aFolderBelowAFileIsRefusedToo() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
        Run run = FrontDoor.run("report", survey.toString(), "--out", file.resolve("deep").toString());
        assertEquals("deep could not be made there. Give another folder after --out.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void anUnwritableFolderIsRefused() throws IOException {
        Files.createDirectories(out);
        assertTrue(out.toFile().setWritable(false));
        try {
            assumeFalse(Files.isWritable(out), "this account may write everywhere");
            Run run = report();
            assertEquals("Nothing may be written into deep. Give another folder after --out.\n", run.err());
            assertEquals(2, run.code());
        } finally {
            assertTrue(out.toFile().setWritable(true));
        }
    }
}
