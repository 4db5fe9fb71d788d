package covewalk.app.open;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.seal.FileChange;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.seal.SealCheck;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.seal.Verified;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenSurveyTest {

    private static final Workers AT_ONCE = new Workers(Runnable::run, Runnable::run, Runnable::run);

    @TempDir
    Path folder;
    private Path demo;
    private OpenSurvey survey;

    @BeforeEach
    void openTheDemonstration() {
        demo = Screens.demo(folder);
        survey = opened(demo);
    }

    private static OpenSurvey opened(Path folder) {
        List<Outcome<OpenSurvey>> told = new ArrayList<>();
        opener().open(folder, told::add);
        return told.get(0).value().orElseThrow();
    }

    private static Opener opener() {
        return new Opener(AT_ONCE, () -> Holder.here("covewalk", Screens.EVENING));
    }

    private static Reading at(String id, double positionM) {
        return new Reading(id, "C1", new Typed(Double.toString(positionM), positionM), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(new Typed("0.4580", 0.4580), new Typed("0.4103", 0.4103))), Optional.empty(), "", "", "", 0);
    }

    private static List<Reading> onDisk(Path folder) throws IOException {
        return SurveyFolder.at(folder).read().log();
    }

    @Test
    void aReadingIsKeptOnlyOnceItIsOnDisk() throws IOException {
        Reading reading = at(survey.nextId(), 1.25);
        survey.keep(reading);
        List<Reading> log = onDisk(demo);
        assertEquals(reading.id(), log.get(log.size() - 1).id());
        assertEquals(reading.id(), survey.lastKeptProperty().get().id());
        assertEquals(log, survey.log());
        assertFalse(survey.hasUnwritten());
    }

    @Test
    void whenTheFolderGoesTheReadingsWaitAndWhenItComesBackTheyAreKeptInOrder() throws IOException {
        Path pulled = folder.resolve("pulled");
        Files.move(demo, pulled);
        List<String> ids = List.of(survey.nextId(), survey.nextId());
        ids.forEach(id -> survey.keep(at(id, 2.0)));
        assertEquals(ids, survey.waiting().stream().map(Reading::id).toList());
        assertEquals("folder.gone", survey.troubleProperty().get().get(0).key());
        Files.move(pulled, demo);
        survey.tryAgain();
        assertEquals(List.of(), survey.waiting());
        assertEquals(List.of(), survey.troubleProperty().get());
        List<String> kept = onDisk(demo).stream().map(Reading::id).toList();
        assertEquals(ids, kept.subList(kept.size() - 2, kept.size()));
    }

    @Test
    void whatWaitsCanBeKeptInAnotherPlace() throws IOException {
        Files.move(demo, folder.resolve("pulled"));
        survey.keep(at(survey.nextId(), 2.0));
        Path other = folder.resolve("other");
        keepIn(other);
        assertEquals(survey.readings().stream().map(Reading::id).toList(), onDisk(other).stream().map(Reading::id).toList());
    }

    @Test
    void whatCanStillBeReadIsTakenAlongAsItIs() throws IOException {
        Files.createDirectories(demo.resolve("photos/ring"));
        Files.write(demo.resolve("photos/ring/R5.jpg"), new byte[] {1, 2, 3});
        byte[] log = Files.readAllBytes(demo.resolve("readings.csv"));
        Path other = folder.resolve("other");
        survey.keep(at(survey.nextId(), 2.0));
        OpenSurvey there = keepIn(other);
        assertEquals(List.of(), there.toKnow());
        assertEquals(List.of(List.of(new FileChange("readings.csv", FileChange.Kind.ROWS_ADDED, 1),
                new FileChange("photos/ring/R5.jpg", FileChange.Kind.ADDED, 0))),
                SealCheck.bySeals(other).value().orElseThrow().stream().map(Verified::changes).toList());
        assertEquals(survey.readings().stream().map(Reading::id).toList(), onDisk(other).stream().map(Reading::id).toList());
        assertArrayEquals(log, Arrays.copyOf(Files.readAllBytes(other.resolve("readings.csv")), log.length), "the bytes that are sealed");
        for (String name : List.of("punch.csv", "seal.json", "photos/ring/R5.jpg")) {
            assertArrayEquals(Files.readAllBytes(demo.resolve(name)), Files.readAllBytes(other.resolve(name)), name);
        }
    }

    @Test
    void aLogThatWasSpoiltMeanwhileIsWrittenAnewFromWhatIsHeld() throws IOException {
        List<Reading> held = survey.readings();
        Files.writeString(demo.resolve("readings.csv"), "nothing of a log\n");
        Path other = folder.resolve("other");
        keepIn(other);
        assertEquals(held.stream().map(Reading::id).toList(), onDisk(other).stream().map(Reading::id).toList());
        assertFalse(Files.exists(other.resolve("seal.json")), "it is of other bytes");
        assertEquals("nothing of a log\n", Files.readString(demo.resolve("readings.csv")), "the folder before stays as it is");
    }

    private OpenSurvey keepIn(Path other) {
        return keepIn(survey, other);
    }

    private static OpenSurvey keepIn(OpenSurvey survey, Path other) {
        List<OpenSurvey> opened = new ArrayList<>();
        opener().keepElsewhere(survey.folder(), other, survey.survey(), survey.readings(), false, told -> {
            assertFalse(told.refused(), told.problems().toString());
            opened.add(told.value().orElseThrow());
        });
        return opened.get(0);
    }

    /** The write was reported as failed, and its row came on disk all the same. */
    @Test
    void aReadingThatCameOnDiskAlthoughItSeemedNotToIsKeptOnce() throws IOException {
        Path pulled = folder.resolve("pulled");
        Files.move(demo, pulled);
        Reading reading = at(survey.nextId(), 2.0);
        survey.keep(reading);
        int before = onDisk(pulled).size();
        Files.writeString(pulled.resolve("readings.csv"), rowOf(reading), StandardOpenOption.APPEND);
        Files.move(pulled, demo);
        survey.tryAgain();
        assertEquals(List.of(), survey.waiting());
        assertEquals(before + 1, onDisk(demo).size());
        assertEquals(onDisk(demo), survey.log());
    }

    @Test
    void workInAFolderThatIsGoneIsRefusedAndNothingIsForgotten() throws IOException {
        List<Reading> held = survey.readings();
        Files.move(demo, folder.resolve("pulled"));
        List<Outcome<Integer>> told = new ArrayList<>();
        survey.onDisk(log -> 1, told::add);
        assertEquals("folder.gone", told.get(0).problems().get(0).key());
        assertEquals(held, survey.readings());
    }

    @Test
    void ofALogThatIsDamagedMeanwhileAllThatWasReadBeforeIsHeld() throws IOException {
        List<Reading> held = survey.readings();
        List<Outcome<Integer>> told = new ArrayList<>();
        survey.onDisk(log -> {
            Files.writeString(demo.resolve("readings.csv"), "nothing of a log\n");
            return 1;
        }, told::add);
        assertTrue(told.get(0).refused());
        assertEquals(held, survey.readings());
    }

    private String rowOf(Reading reading) throws IOException {
        OpenSurvey another = opened(Screens.demo(Files.createDirectory(folder.resolve("another"))));
        another.keep(reading);
        List<String> lines = Files.readAllLines(another.folder().resolve("readings.csv"));
        return lines.get(lines.size() - 1) + "\n";
    }

    @Test
    void aReadingTypedWhileAnImportRunsHasANumberOfItsOwn() throws IOException {
        Deque<Runnable> later = new ArrayDeque<>();
        List<OpenSurvey> slow = new ArrayList<>();
        survey.close();
        new Opener(new Workers(later::add, Runnable::run, Runnable::run), () -> Holder.here("covewalk", Screens.EVENING))
                .open(demo, told -> slow.add(told.value().orElseThrow()));
        later.remove().run();
        int before = onDisk(demo).size();
        slow.get(0).onDisk(log -> log.append(at(log.nextId(), 3.0)), told -> assertFalse(told.refused()));
        slow.get(0).keep(at(slow.get(0).nextId(), 2.0));
        while (!later.isEmpty()) {
            later.remove().run();
        }
        assertEquals(List.of(), slow.get(0).waiting());
        List<Reading> added = onDisk(demo).subList(before, before + 2);
        assertEquals(List.of(3.0, 2.0), added.stream().map(reading -> reading.positionM().value()).toList());
        assertNotEquals(added.get(0).id(), added.get(1).id());
    }

    @Test
    void anotherWindowsReadingOfTheSameNumberCostsNoneOfOurs() throws IOException {
        OpenSurvey second = opened(demo);
        Reading ours = at(second.nextId(), 1);
        second.keep(ours);
        second.keep(correctionOf(ours, second.nextId()));
        survey.keep(at(ours.id(), 2));
        survey.close();
        second.tryAgain();
        assertEquals(List.of(), second.troubleProperty().get());
        assertEquals(List.of(), second.waiting());
        List<Reading> log = onDisk(demo);
        assertEquals(log, second.log(), "the other's too");
        Reading theirs = log.get(log.size() - 3);
        Reading kept = log.get(log.size() - 2);
        assertEquals(2, theirs.positionM().value());
        assertEquals(1, kept.positionM().value());
        assertEquals(kept.id(), log.get(log.size() - 1).replaces());
        assertNotEquals(theirs.id(), kept.id());
    }

    private static Reading correctionOf(Reading before, String id) {
        return new Reading(id, before.cove(), before.positionM(), before.role(), before.setUp(), before.round(), before.colour(), before.lux(),
                "", before.id(), "", 0);
    }

    @Test
    void keptElsewhereItStandsBesideAnotherWindowsReadingOfTheSameNumber() throws IOException {
        OpenSurvey second = opened(demo);
        second.keep(at(second.nextId(), 1));
        survey.keep(at(survey.nextId(), 2));
        OpenSurvey there = keepIn(second, folder.resolve("other"));
        List<Reading> log = onDisk(there.folder());
        assertEquals(log, there.log());
        assertEquals(List.of(2.0, 1.0), log.subList(log.size() - 2, log.size()).stream().map(reading -> reading.positionM().value()).toList());
    }

    @Test
    void aFaultOfOursIsToldAndTheNextReadingIsKept() throws IOException {
        List<Outcome<Object>> told = new ArrayList<>();
        survey.onDisk(log -> {
            throw new IllegalStateException("a fault");
        }, told::add);
        assertEquals("folder.fault", told.get(0).problems().get(0).key());
        survey.keep(at(survey.nextId(), 2));
        assertEquals(List.of(), survey.waiting());
        assertEquals(onDisk(demo), survey.log());
    }

    @Test
    void aSecondProgramMayLookButNotWrite() {
        OpenSurvey second = opened(demo);
        assertEquals("lock.held", second.troubleProperty().get().get(0).key());
        assertTrue(second.judgementProperty().get().faults().size() > 3);
        second.keep(at(second.nextId(), 1));
        assertEquals(1, second.waiting().size());
    }

    @Test
    void aDescriptionThatCannotBeIsNotTaken() throws IOException {
        byte[] before = Files.readAllBytes(demo.resolve("survey.json"));
        assertFalse(survey.change(now -> new covewalk.survey.Survey(now.site(), now.visit(), now.setUps(), now.limits(), List.of(), now.coves(),
                now.claim())).isEmpty());
        assertEquals(new String(before), Files.readString(demo.resolve("survey.json")));
    }

    @Test
    void aChangeIsSavedAndJudgedAtOnce() throws IOException {
        assertEquals(List.of(), survey.change(now -> now.with(now.limits().withNeighbourSteps(7))));
        assertEquals(7, SurveyFolder.at(demo).read().survey().orElseThrow().limits().neighbourSteps());
        assertEquals(7, survey.judgementProperty().get().survey().limits().neighbourSteps());
    }

    /** A list made anew for each asker is held by nobody, and who listens to it goes deaf. */
    @Test
    void whoListensToTheReadingsListensToOneListForAll() {
        assertSame(survey.log(), survey.log());
        assertSame(survey.waiting(), survey.waiting());
    }

    @Test
    void anotherFolderIsNoSurveyAndStaysAsItIs() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        opener().open(empty, told -> assertTrue(told.refused()));
        try (var files = Files.list(empty)) {
            assertEquals(0, files.count());
        }
    }
}
