package covewalk.app.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.Screens;
import covewalk.app.desk.Desk;
import covewalk.app.desk.Memory;
import covewalk.app.desk.Place;
import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.report.Readership.Reader;
import covewalk.survey.file.disk.Holder;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportModelTest {

    @TempDir
    Path folder;
    private Desk desk;
    private ReportModel model;

    @BeforeEach
    void open() {
        desk = DemoDesk.open(folder);
        desk.go(Place.REPORT);
        model = new ReportModel(desk);
    }

    private Path survey() {
        return desk.survey().folder();
    }

    private static byte[] seal(Path survey) throws IOException {
        return Files.readAllBytes(survey.resolve("seal.json"));
    }

    @Test
    void goesBesideTheSurveyUnlessToldOtherwise() {
        assertEquals(folder.resolve("reading-rooms-report").toAbsolutePath().toString(), model.folderProperty().get());
    }

    @Test
    void saysBeforeWhatWillBeInIt() {
        Contents contents = model.contentsProperty().get();
        assertEquals(desk.survey().judgementProperty().get().count(Verdict.BEYOND), contents.counts().get(Verdict.BEYOND));
        assertEquals(List.of(), contents.notWalked());
        assertEquals("M. Hollin (invented)", contents.inspector().orElseThrow());
        assertTrue(contents.setBy().contains("2 steps between neighbours"), contents.setBy());
    }

    @Test
    void writesSealsAndListsTheFiles() throws IOException {
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        byte[] before = seal(survey());
        model.write();
        Issued issued = model.issuedProperty().get();
        assertNotNull(issued, model.statusProperty().get());
        assertEquals(List.of(), issued.toKnow());
        assertTrue(issued.files().stream().map(file -> file.getFileName().toString()).toList()
                .containsAll(List.of("punch-list.html", "punch-list.pdf", "punch-list.csv", "punch-list.json")), issued.files().toString());
        assertTrue(Files.readString(folder.resolve("reading-rooms-report").resolve("punch-list.html")).contains(issued.seal()));
        assertFalse(java.util.Arrays.equals(before, seal(survey())), "a reading came in since the last seal");
        assertEquals("", model.statusProperty().get());
    }

    @Test
    void writesInTheLanguageChosen() throws IOException {
        model.languageProperty().set(Language.GERMAN);
        model.write();
        assertTrue(Files.readString(folder.resolve("reading-rooms-report").resolve("punch-list.html")).contains("Mängelliste"));
    }

    @Test
    void ofAFolderThatIsGoneThereIsNoReportAndTheReadingsStay() throws IOException {
        int held = desk.survey().readings().size();
        Files.move(survey(), folder.resolve("pulled"));
        model.write();
        assertTrue(model.statusProperty().get().startsWith("The folder of this survey is not there any more"), model.statusProperty().get());
        assertNull(model.issuedProperty().get());
        assertEquals(held, desk.survey().readings().size());
    }

    @Test
    void ofALogThatIsDamagedMeanwhileThereIsNoReport() throws IOException {
        Files.writeString(survey().resolve("readings.csv"), "nothing of a log\n");
        model.write();
        assertTrue(model.statusProperty().get().startsWith("readings.csv"), model.statusProperty().get());
        assertNull(model.issuedProperty().get());
        assertFalse(Files.exists(folder.resolve("reading-rooms-report").resolve("punch-list.html")));
    }

    /** This window was opened while another one held the lock. */
    private OpenSurvey openedAgainBehindAnother() {
        Path demo = survey();
        desk.close();
        List<OpenSurvey> told = new ArrayList<>();
        Workers atOnce = new Workers(Runnable::run, Runnable::run, Runnable::run);
        new Opener(atOnce, () -> Holder.here("covewalk", Screens.EVENING)).open(demo, opened -> told.add(opened.value().orElseThrow()));
        desk.open(demo, why -> {
            throw new AssertionError(why);
        });
        assertEquals("lock.held", desk.survey().troubleProperty().get().get(0).key());
        return told.get(0);
    }

    private void assertNothingIssued(byte[] sealBefore) throws IOException {
        assertTrue(model.statusProperty().get().startsWith("Another program changed this survey meanwhile, so nothing was done."),
                model.statusProperty().get());
        assertNull(model.issuedProperty().get());
        assertEquals(new String(sealBefore), new String(seal(survey())));
        assertFalse(Files.exists(folder.resolve("reading-rooms-report").resolve("punch-list.json")));
    }

    @Test
    void ofADescriptionThatIsNotOnDiskThereIsNoReport() throws IOException {
        OpenSurvey other = openedAgainBehindAnother();
        assertEquals(List.of(), other.change(now -> now.with(now.limits().withNeighbourSteps(7))));
        other.close();
        byte[] before = seal(survey());
        model.write();
        assertNothingIssued(before);
        assertEquals(List.of(), desk.survey().troubleProperty().get());
        model.write();
        assertNotNull(model.issuedProperty().get(), model.statusProperty().get());
        assertTrue(Files.readString(folder.resolve("reading-rooms-report").resolve("punch-list.json"))
                .matches("(?s).*\"neighbourSteps\" ?: ?7\\.0.*"));
    }

    /** An editor asks for no lock, and nothing was opened anew since. */
    @Test
    void ofALogThatIsAnotherThanTheOneJudgedThereIsNoReport() throws IOException {
        Path log = survey().resolve("readings.csv");
        List<String> rows = Files.readAllLines(log);
        Files.writeString(log, rows.get(rows.size() - 1).replaceFirst("^[^,]*", "900") + "\n", StandardOpenOption.APPEND);
        int held = desk.survey().log().size();
        byte[] before = seal(survey());
        model.write();
        assertNothingIssued(before);
        assertEquals(held + 1, desk.survey().log().size());
        model.write();
        assertNotNull(model.issuedProperty().get(), model.statusProperty().get());
    }

    @Test
    void ofADescriptionThatAnEditorChangedThereIsNoReportUntilItIsShown() throws IOException {
        Path file = survey().resolve("survey.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\"neighbourSteps\": *[0-9.]+", "\"neighbourSteps\": 7.0"));
        byte[] before = seal(survey());
        model.write();
        assertNothingIssued(before);
        assertEquals(7, desk.survey().survey().limits().neighbourSteps());
        model.write();
        assertNotNull(model.issuedProperty().get(), model.statusProperty().get());
    }

    @Test
    void saysWhenSomethingHasChangedSince() {
        model.write();
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        assertTrue(model.statusProperty().get().startsWith("Something has changed since"), model.statusProperty().get());
        assertNotNull(model.issuedProperty().get(), "the files are still there");
    }

    @Test
    void aFileInTheWayIsSaidPlainlyAndNothingIsSealed() throws IOException {
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        byte[] before = seal(survey());
        Path file = Files.writeString(folder.resolve("taken"), "");
        model.folderProperty().set(file.toString());
        model.write();
        assertEquals("taken is a file. Name another folder.", model.statusProperty().get());
        assertNull(model.issuedProperty().get());
        assertEquals(new String(before), new String(seal(survey())));
        DemoDesk.read(desk, "C1", 4.5, "0.4577", "0.4110");
        assertEquals(List.of(), desk.survey().waiting().stream().toList(), "the survey's own folder goes on");
    }

    @Test
    void withoutAFolderItSaysSo() {
        model.folderProperty().set("  ");
        assertEquals("Name a folder for the report.", model.whyNotProperty().get());
        model.write();
        assertNull(model.issuedProperty().get());
    }

    @Test
    void waitsForWhatIsNotOnDisk() throws IOException {
        Files.move(survey(), folder.resolve("pulled"));
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        assertTrue(model.whyNotProperty().get().startsWith("Something is not on disk yet"), model.whyNotProperty().get());
        model.write();
        assertFalse(Files.exists(folder.resolve("reading-rooms-report")));
    }

    @Test
    void sealsThatCannotBeReadAreToldAndTheReportIsWrittenAllTheSame() throws IOException {
        Files.writeString(survey().resolve("seal.json"), "{");
        model.write();
        assertEquals("", model.issuedProperty().get().seal());
        assertTrue(model.issuedProperty().get().toKnow().stream().anyMatch(sentence -> sentence.startsWith("The report is not sealed")));
    }

    @Test
    void aDamagedLogOfItemsIsToldAndNoNumberIsGivenTwice() throws IOException {
        byte[] before = seal(survey());
        Files.writeString(survey().resolve("punch.csv"), "item,due\n1,soon\n");
        model.write();
        assertEquals("punch.csv:2: due: soon is no date. Write it as 2026-12-01.", model.statusProperty().get());
        assertNull(model.issuedProperty().get());
        assertEquals(new String(before), new String(seal(survey())));
    }

    @Test
    void aReaderGetsAPageBesideTheList() {
        model.forWhom().readerProperty().set(Reader.SPECIFIER);
        model.write();
        assertTrue(names(model).containsAll(List.of("punch-list.html", "specifier.html", "specifier.pdf")), names(model).toString());
    }

    @Test
    void theDossierWaitsForItsReel() {
        model.forWhom().readerProperty().set(Reader.WARRANTY);
        assertEquals("Name the reel for the dossier.", model.whyNotProperty().get());
        model.write();
        assertNull(model.issuedProperty().get());
        model.forWhom().reelProperty().set("R2");
        assertEquals("", model.whyNotProperty().get());
        model.write();
        assertTrue(names(model).contains("warranty-R2.html"), names(model).toString());
    }

    private static List<String> names(ReportModel model) {
        return model.issuedProperty().get().files().stream().map(file -> file.getFileName().toString()).toList();
    }

    /** A report that is stopped as it comes to a step, with a disk that works when it is told to. */
    private ReportModel stoppedAt(String step, Path copy) throws IOException {
        Queue<Runnable> disk = new ArrayDeque<>();
        Workers workers = new Workers(disk::add, Runnable::run, Runnable::run);
        Desk slow = new Desk(new Opener(workers, () -> Holder.here("covewalk", Screens.EVENING)), workers, Screens.EVENING, Memory.blank());
        slow.open(Screens.demo(Files.createDirectories(copy)), refused -> { });
        disk.remove().run();
        Files.delete(copy.resolve("reading-rooms").resolve("seal.json"));
        ReportModel stopped = new ReportModel(slow);
        stopped.forWhom().readerProperty().set(Reader.SPECIFIER);
        stopped.statusProperty().addListener((property, before, now) -> {
            if (now.equals(step)) {
                stopped.stop();
            }
        });
        stopped.write();
        assertTrue(stopped.runningProperty().get());
        assertTrue(stopped.stoppableProperty().get());
        disk.remove().run();
        assertFalse(stopped.runningProperty().get());
        assertFalse(stopped.stoppableProperty().get());
        return stopped;
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    @Test
    void stoppedBeforeItIsSealedNothingWasDone() throws IOException {
        ReportModel stopped = stoppedAt("Reading the survey\u2026", folder.resolve("slow"));
        assertEquals("Stopped. Nothing was sealed or written.", stopped.statusProperty().get());
        assertNull(stopped.issuedProperty().get());
        assertEquals(List.of(), files(folder.resolve("slow").resolve("reading-rooms-report")));
        assertFalse(Files.exists(folder.resolve("slow").resolve("reading-rooms").resolve("seal.json")));
    }

    @Test
    void stoppedOnceItIsSealedItSaysSoWithTheCode() throws IOException {
        ReportModel stopped = stoppedAt("Writing the files\u2026", folder.resolve("slow"));
        assertEquals("Stopped. The survey is sealed and its items are numbered; no file of the report was written.",
                stopped.statusProperty().get());
        assertEquals(List.of(), stopped.issuedProperty().get().files());
        assertEquals(List.of(), files(folder.resolve("slow").resolve("reading-rooms-report")));
        assertTrue(Files.readString(folder.resolve("slow").resolve("reading-rooms").resolve("seal.json"))
                .contains(stopped.issuedProperty().get().seal()));
    }

    @Test
    void withoutASurveyThereIsNothingToWrite() {
        ReportModel none = new ReportModel(DemoDesk.empty());
        assertEquals("Open a survey first.", none.whyNotProperty().get());
        none.write();
        assertNull(none.contentsProperty().get());
    }
}
