package covewalk.app.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.Screens;
import covewalk.app.desk.Desk;
import covewalk.app.strip.Finding;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchLog;
import covewalk.survey.file.punch.PunchState;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PunchModelTest {

    @TempDir
    Path folder;
    private Desk desk;
    private PunchModel model;

    @BeforeEach
    void open() {
        desk = DemoDesk.open(folder);
        model = new PunchModel(desk);
    }

    private Finding at(int cove, double positionM) {
        Judgement judgement = desk.survey().judgementProperty().get();
        return Finding.in(judgement.coves().get(cove), judgement.survey().limits()).stream()
                .filter(finding -> Math.abs(finding.positionM() - positionM) < 1e-6).findFirst().orElseThrow();
    }

    private PunchState onDisk(int item) throws IOException {
        return PunchLog.read(desk.survey().folder()).value().orElseThrow().item(item).orElseThrow();
    }

    @Test
    void theFirstFaultOnTheWayIsTheFirstItem() {
        model.look(at(0, 5));
        assertEquals("Item 1 of the punch list: open", model.titleProperty().get());
        model.look(at(0, 15));
        assertNull(model.itemProperty().get(), "what is within is no item");
    }

    private String log() throws IOException {
        return Files.readString(desk.survey().folder().resolve("punch.csv"));
    }

    @Test
    void lookingWritesNothing() throws IOException {
        String before = log();
        model.look(at(0, 5));
        assertEquals(before, log());
    }

    @Test
    void aFirstRecordFixesTheNumbersOfAllItems() throws IOException {
        Files.delete(desk.survey().folder().resolve("punch.csv"));
        Files.delete(desk.survey().folder().resolve("seal.json"));
        model.look(at(2, 5));
        model.typed(PunchColumn.NOTE).set("a note");
        model.record();
        assertEquals("a note", onDisk(5).text(PunchColumn.NOTE));
        assertEquals(10, onDisk(2).place().orElseThrow().positionM(), 1e-9);
    }

    @Test
    void whatIsTypedIsRecordedWithTheItemsNumber() throws IOException {
        model.look(at(0, 5));
        model.typed(PunchColumn.RESPONSIBLE).set("Ottersedge");
        model.today(PunchColumn.DONE);
        model.record();
        assertEquals("Recorded in the survey's folder.", model.statusProperty().get());
        assertEquals("Ottersedge", onDisk(1).text(PunchColumn.RESPONSIBLE));
        assertEquals("2026-10-05", onDisk(1).text(PunchColumn.DONE));
        assertEquals(5, onDisk(1).place().orElseThrow().positionM(), 1e-9);
        assertEquals("Item 1 of the punch list: done", model.titleProperty().get());
    }

    @Test
    void whatIsEmptiedIsCleared() throws IOException {
        model.look(at(0, 5));
        model.typed(PunchColumn.NOTE).set("behind the panel");
        model.record();
        model.typed(PunchColumn.NOTE).set("");
        model.record();
        assertEquals("", onDisk(1).text(PunchColumn.NOTE));
    }

    @Test
    void aDateThatIsNoneIsNotRecordedAndStays() throws IOException {
        String before = log();
        model.look(at(0, 5));
        model.typed(PunchColumn.DUE).set("next week");
        model.record();
        assertTrue(model.statusProperty().get().contains("next week"), model.statusProperty().get());
        assertEquals("next week", model.typed(PunchColumn.DUE).get());
        assertEquals(before, log());
    }

    @Test
    void whatIsTypedStaysWhenReadingsComeInAndWhenSomebodyLooksElsewhere() {
        model.look(at(0, 5));
        model.typed(PunchColumn.NOTE).set("half a sentence");
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        model.look(at(0, 5));
        assertEquals("half a sentence", model.typed(PunchColumn.NOTE).get());
        model.look(at(2, 5));
        assertEquals("", model.typed(PunchColumn.NOTE).get());
        model.look(at(0, 5));
        assertEquals("half a sentence", model.typed(PunchColumn.NOTE).get());
    }

    @Test
    void recordingNothingSaysSo() {
        model.look(at(0, 5));
        model.record();
        assertEquals("Nothing was changed.", model.statusProperty().get());
    }

    @Test
    void aDamagedLogIsSaidAndNothingIsOffered() throws IOException {
        Files.writeString(desk.survey().folder().resolve("punch.csv"), "nonsense\n1\n");
        model.look(at(0, 5));
        assertNull(model.itemProperty().get());
        assertFalse(model.unreadProperty().get().isEmpty());
    }

    private void recordDoneAndTypeANote() {
        model.look(at(0, 5));
        model.typed(PunchColumn.DONE).set("2026-10-04");
        model.record();
        model.typed(PunchColumn.NOTE).set("half a sentence");
    }

    private void itemOneIsShownAsBefore() {
        assertEquals("Item 1 of the punch list: done", model.titleProperty().get());
        assertEquals("2026-10-04", model.typed(PunchColumn.DONE).get());
        assertEquals("half a sentence", model.typed(PunchColumn.NOTE).get());
    }

    /** An item of a folder that is not there was shown as a new one, open, with nothing recorded. */
    @Test
    void whenTheFolderGoesWhileAnItemIsShownItStaysAndThatIsSaid() throws IOException {
        recordDoneAndTypeANote();
        Path pulled = folder.resolve("pulled");
        Files.move(desk.survey().folder(), pulled);
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        model.look(at(0, 5));
        itemOneIsShownAsBefore();
        assertTrue(model.unreadProperty().get().startsWith("The folder of this survey is not there any more."), model.unreadProperty().get());
        Files.move(pulled, desk.survey().folder());
        model.look(at(0, 5));
        itemOneIsShownAsBefore();
        assertEquals("", model.unreadProperty().get());
        model.record();
        assertEquals("half a sentence", onDisk(1).text(PunchColumn.NOTE));
    }

    @Test
    void whenTheLogIsDamagedWhileAnItemIsShownItStaysAndThatIsSaid() throws IOException {
        recordDoneAndTypeANote();
        String sound = log();
        Path log = desk.survey().folder().resolve("punch.csv");
        Files.writeString(log, "nonsense\n1\n");
        model.look(at(0, 5));
        itemOneIsShownAsBefore();
        assertFalse(model.unreadProperty().get().isEmpty());
        model.record();
        assertFalse(model.statusProperty().get().startsWith("Recorded"), model.statusProperty().get());
        assertEquals("nonsense\n1\n", log(), "what is damaged is not written over");
        Files.writeString(log, sound);
        model.record();
        assertEquals("half a sentence", onDisk(1).text(PunchColumn.NOTE));
        assertEquals("", model.unreadProperty().get());
    }

    @Test
    void aFaultOfOursIsToldToo() {
        PunchReading reading = PunchReading.of(desk.survey().folder(), null, false, Optional.empty());
        assertTrue(reading.list().isEmpty());
        assertEquals(List.of(), reading.problems());
    }

    @Test
    void whileTheFolderIsGoneWhatWasTypedStays() throws IOException {
        model.look(at(0, 5));
        model.typed(PunchColumn.NOTE).set("kept");
        Path pulled = folder.resolve("pulled");
        Files.move(desk.survey().folder(), pulled);
        model.record();
        assertFalse(model.statusProperty().get().isEmpty());
        assertEquals("kept", model.typed(PunchColumn.NOTE).get());
        Files.move(pulled, desk.survey().folder());
        model.record();
        assertEquals("kept", onDisk(1).text(PunchColumn.NOTE));
    }

    /** The same site visited again, with what changed on the way. */
    private void visitAgain(String follows, UnaryOperator<String> log) throws IOException {
        Path second = Screens.demo(Files.createDirectory(folder.resolve("second")));
        Path beside = Files.move(second, folder.resolve("reading-rooms-again"));
        for (String file : List.of("punch.csv", "seal.json")) {
            Files.delete(beside.resolve(file));
        }
        Path description = beside.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"follows\": \"\"", "\"follows\": \"" + follows + "\""));
        Files.writeString(beside.resolve("readings.csv"), log.apply(Files.readString(beside.resolve("readings.csv"))));
        desk.open(beside, refused -> {
            throw new AssertionError(refused);
        });
    }

    @Test
    void whatAnEarlierVisitFoundStandsBesideTheFault() throws IOException {
        model.look(at(0, 5));
        assertEquals("", model.beforeProperty().get(), "this visit follows none");
        visitAgain("reading-rooms", log -> log);
        model.look(at(0, 5));
        assertTrue(model.beforeProperty().get().startsWith("Before (2026-10-12): 3.41 steps, standard uncertainty "),
                model.beforeProperty().get());
        assertTrue(model.titleProperty().get().startsWith("Item 1 of the punch list"), model.titleProperty().get());
    }

    @Test
    void whatWasNotReadAgainSaysSoAtItsPlace() throws IOException {
        visitAgain("reading-rooms", log -> log.lines().limit(1).collect(Collectors.joining("", "", "\n")));
        model.look(at(0, 5));
        assertTrue(model.beforeProperty().get().startsWith("Item 1: C1 at 5.00 m, joint, R1 | R2: not read this time. Before (2026-10-12): 3.41"),
                model.beforeProperty().get());
        assertNull(model.itemProperty().get());
    }

    @Test
    void anEarlierVisitThatIsNotThereIsSaid() throws IOException {
        visitAgain("spring", log -> log);
        model.look(at(0, 5));
        assertTrue(model.beforeProperty().get().startsWith("The earlier survey spring does not lie beside this one"),
                model.beforeProperty().get());
    }
}
