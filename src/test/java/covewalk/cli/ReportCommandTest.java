package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import covewalk.cli.FrontDoor.Run;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    void addsNothingToTheSurveyButTheNumbersOfTheItemsAndTheSeal() throws IOException {
        report();
        assertEquals(List.of("lock", "punch.csv", "readings.csv", "seal.json", "survey.json"), SmallSurvey.files(survey));
        assertEquals("1,,,,,,,,C1,joint,4.000,R1 | R2", Files.readAllLines(survey.resolve("punch.csv")).get(1));
        assertTrue(Files.readString(survey.resolve("seal.json")).contains("\"punch.csv\""));
    }

    @Test
    void withoutItemsNothingIsRecordedOfThem() throws IOException {
        Path even = SmallSurvey.in(folder.resolve("even"), 0);
        assertEquals(0, FrontDoor.run("report", even.toString(), "--out", out.toString()).code());
        assertEquals(List.of("lock", "readings.csv", "seal.json", "survey.json"), SmallSurvey.files(even));
    }

    /** The same white read as two, an hour apart: what differs then may be the hour and not the reel. */
    @Test
    void whereTheReferenceSpotDriftedThatComesBeforeAnyRepair() throws IOException {
        String walk = Files.readString(survey.resolve("readings.csv")).substring(SmallSurvey.HEADER.length());
        int middle = walk.indexOf("\n", walk.length() / 2) + 1;
        Files.writeString(survey.resolve("readings.csv"), SmallSurvey.HEADER + reference(100, 0.26, 18) + walk.substring(0, middle)
                + reference(110, 0.26275, 19) + walk.substring(middle) + reference(120, 0.2655, 20));
        report();
        String page = Files.readString(out.resolve("punch-list.html")).replaceAll("\\s+", " ");
        int drift = page.indexOf("Before anything is taken down: the reference spot drifted during the walk");
        assertTrue(drift > 0 && drift < page.indexOf("Put right first"), page);
    }

    private static String reference(int id, double u, int hour) {
        return IntStream.range(0, 3).mapToObj(i -> String.format(Locale.ROOT, "%d,C1,1,reference,,,,,,,%.4f,0.5300,,2026-10-05T%d:00:0%d,,%n",
                id + i, u + i * 0.0001, hour, i)).collect(Collectors.joining()).replace("\r", "");
    }

    @Test
    void whereAnotherProgramWritesTheReportIsMadeAndNeitherSealedNorNumbered() throws IOException {
        try (FolderLock other = FolderLock.take(survey, new Holder("Covewalk", "ben", "office-pc", "2026-10-05 18:00")).value().orElseThrow()) {
            Run run = report();
            assertEquals("The report is complete, but not sealed, and new items have no fixed numbers. Put right what is said next, then"
                    + " make it again.\nSomebody else writes in this survey: Covewalk, run by ben on office-pc since 2026-10-05 18:00. Close the"
                    + " survey there, then open it here.\nNew items got these numbers for this time only: 1. A report fixes them, or recording something of them,"
                    + " where the survey's folder can be written.\n", run.err());
            assertFalse(run.out().contains("Sealed"), run.out());
            assertEquals(1, run.code());
            assertEquals(4, SmallSurvey.files(out).size());
            assertTrue(Files.readString(out.resolve("punch-list.json")).contains("\"numberFixed\" : false"));
            assertEquals(survey, other.folder());
        }
        assertEquals(List.of("lock", "readings.csv", "survey.json"), SmallSurvey.files(survey));
        assertTrue(report().out().contains("Sealed"), "the lock was given back");
    }

    /** A folder named lock stands for a disk that may not be written, which some accounts always may. */
    @Test
    void aFolderThatMayNotBeWrittenIsReportedWithNumbersForThisTime() throws IOException {
        Files.createDirectory(survey.resolve("lock"));
        Run run = report();
        assertTrue(run.err().startsWith("The report is complete, but not sealed, and new items have no fixed numbers. Put right what is said next,"
                + " then make it again.\nThis folder cannot be locked for writing: "), run.err());
        assertEquals(1, run.code());
        assertEquals(List.of("readings.csv", "survey.json"), SmallSurvey.files(survey));
    }

    @Test
    void aPunchLogWithoutRoomForThePlacesIsToldAndTheReportMade() throws IOException {
        Files.writeString(survey.resolve("punch.csv"), "item,note\n");
        Run run = report();
        assertTrue(run.err().startsWith("The report is complete, but not sealed, and new items have no fixed numbers. Put right what is said next,"
                + " then make it again.\npunch.csv:1: cove: The file has no column cove"), run.err());
        assertFalse(run.out().contains("Sealed"), run.out());
        assertEquals("item,note\n", Files.readString(survey.resolve("punch.csv")));
    }

    @Test
    void aDamagedPunchLogStopsTheReport() throws IOException {
        Files.writeString(survey.resolve("punch.csv"), "item,due\n1,soon\nx,\n");
        Run run = report();
        assertEquals("punch.csv:2: due: soon is no date. Write it as 2026-12-01.\n"
                + "punch.csv:3: item: x is no item number. Write a whole number from 1 to 999999.\n", run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(survey.resolve("seal.json")));
    }

    @Test
    void aFolderThatIsNoSurveyStaysAsItIs() throws IOException {
        Path other = Files.createDirectory(folder.resolve("pictures"));
        assertEquals(2, FrontDoor.run("report", other.toString(), "--out", out.toString()).code());
        assertEquals(List.of(), SmallSurvey.files(other));
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
        assertTrue(Files.exists(survey.resolve("punch.csv")), "its numbers are fixed");
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

    @Test
    void aPageForOneReaderIsWrittenBesideThePunchList() throws IOException {
        Run run = FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "specifier");
        assertTrue(run.out().contains("Wrote " + out.resolve("specifier.html") + "\n"), run.out() + run.err());
        assertTrue(Files.exists(out.resolve("specifier.pdf")));
        FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "warranty", "--reel", "R2");
        assertTrue(Files.readString(out.resolve("warranty-R2.html")).contains("Warranty dossier, reel R2"));
        assertEquals(1, run.code());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        --for warranty              | --reel is missing: which reel the dossier is about. Give its id or its serial.
        --reel R1                   | --reel goes with --for warranty. Give both, or leave it out.
        --for specifier --reel R1   | --reel goes with --for warranty. Give both, or leave it out.
        --for warranty --reel r9    | --reel: no reel has the id or serial "r9". There are: R1, R2, R3.
        --for warranty --reel R9    | --reel: no reel has the id or serial "R9". There are: R1, R2, R3.
        """)
    void whatDoesNotGoTogetherIsRefusedBeforeAnythingIsWritten(String options, String words) throws IOException {
        List<String> line = new ArrayList<>(List.of("report", survey.toString(), "--out", out.toString()));
        line.addAll(List.of(options.split(" ")));
        Run run = FrontDoor.run(line.toArray(String[]::new));
        assertEquals(words + "\n", run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(out));
        assertFalse(Files.exists(survey.resolve("punch.csv")));
    }

    @Test
    void aReelIsFoundByItsSerialWhereNoOtherHasIt() throws IOException {
        Path description = survey.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"id\": \"R1\",", "\"id\": \"R1\", \"serial\": \"S1\",")
                .replace("\"id\": \"R2\",", "\"id\": \"R2\", \"serial\": \"S2\",").replace("\"id\": \"R3\",", "\"id\": \"R3\", \"serial\": \"S2\","));
        FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "warranty", "--reel", "S1");
        assertTrue(Files.exists(out.resolve("warranty-R1.html")));
        assertEquals("--reel: several reels have the serial S2. Give the id of one: R2, R3.\n",
                FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "warranty", "--reel", "S2").err());
    }

    @Test
    void capitalsOfAReelMatterOnlyWhereTheyTellTwoApart() throws IOException {
        Path description = survey.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"id\": \"R2\",", "\"id\": \"R2\", \"serial\": \"Qa\",")
                .replace("\"id\": \"R3\",", "\"id\": \"R3\", \"serial\": \"qA\","));
        FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "warranty", "--reel", "r1");
        assertTrue(Files.exists(out.resolve("warranty-R1.html")));
        assertEquals("--reel: QA fits several reels where capitals do not count. Give the id of one as it is written here: R2, R3.\n",
                FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "warranty", "--reel", "QA").err());
        FrontDoor.run("report", survey.toString(), "--out", out.toString(), "--for", "warranty", "--reel", "qA");
        assertTrue(Files.exists(out.resolve("warranty-R3.html")));
    }
}
