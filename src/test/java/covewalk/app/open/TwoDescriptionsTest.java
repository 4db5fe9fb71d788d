package covewalk.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows on one survey: the second was opened while the first held the lock. */
class TwoDescriptionsTest {

    private static final double USUAL = 2;
    private static final double THEIRS = 4;
    private static final double OURS = 7;

    @TempDir
    Path folder;
    private Path demo;
    private OpenSurvey first;
    private OpenSurvey second;

    @BeforeEach
    void openTwice() {
        demo = Screens.demo(folder);
        first = opened();
        second = opened();
        assertEquals("lock.held", trouble());
    }

    private OpenSurvey opened() {
        List<OpenSurvey> told = new ArrayList<>();
        Workers atOnce = new Workers(Runnable::run, Runnable::run, Runnable::run);
        new Opener(atOnce, () -> Holder.here("covewalk", Screens.EVENING)).open(demo, outcome -> told.add(outcome.value().orElseThrow()));
        return told.get(0);
    }

    private static void limit(OpenSurvey survey, double steps) {
        assertEquals(List.of(), survey.change(now -> now.with(now.limits().withNeighbourSteps(steps))));
    }

    private static double limit(Survey survey) {
        return survey.limits().neighbourSteps();
    }

    private Survey onDisk() throws IOException {
        return SurveyFolder.at(demo).read().survey().orElseThrow();
    }

    private String trouble() {
        return second.troubleProperty().get().stream().map(Problem::key).findFirst().orElse("");
    }

    /** Both changed it, and then the first was closed. */
    private void changeBoth() {
        limit(first, THEIRS);
        limit(second, OURS);
        first.close();
        second.tryAgain();
    }

    private List<Double> keptAside() throws IOException {
        List<Double> limits = new ArrayList<>();
        try (var files = Files.list(demo.resolve("originals"))) {
            for (Path file : files.filter(name -> name.getFileName().toString().startsWith("survey")).toList()) {
                Path alone = Files.createTempDirectory(folder, "aside");
                Files.copy(file, alone.resolve("survey.json"));
                limits.add(limit(SurveyFolder.at(alone).read().survey().orElseThrow()));
            }
        }
        return limits;
    }

    @Test
    void whatTheOtherSavedIsNotWrittenOver() throws IOException {
        changeBoth();
        assertEquals("folder.described-elsewhere", trouble());
        assertEquals(THEIRS, limit(onDisk()));
        assertEquals(OURS, limit(second.survey()));
        assertEquals(THEIRS, limit(second.theirsProperty().get()));
        assertTrue(second.hasUnwritten());
    }

    @Test
    void tryingAgainAsksAgain() throws IOException {
        changeBoth();
        second.tryAgain();
        assertEquals("folder.described-elsewhere", trouble());
        limit(second, OURS + 1);
        assertEquals("folder.described-elsewhere", trouble());
        assertEquals(THEIRS, limit(onDisk()));
    }

    @Test
    void theirsIsTakenAndOursLiesInOriginals() throws IOException {
        changeBoth();
        second.takeTheirs(why -> assertEquals(List.of(), why));
        assertEquals("", trouble());
        assertNull(second.theirsProperty().get());
        assertFalse(second.hasUnwritten());
        assertEquals(THEIRS, limit(second.survey()));
        assertEquals(THEIRS, limit(second.judgementProperty().get().survey()));
        assertEquals(THEIRS, limit(onDisk()));
        assertEquals(List.of(OURS), keptAside());
    }

    @Test
    void oursIsKeptAndTheirsLiesInOriginals() throws IOException {
        changeBoth();
        second.keepOurs();
        assertEquals("", trouble());
        assertNull(second.theirsProperty().get());
        assertFalse(second.hasUnwritten());
        assertEquals(OURS, limit(onDisk()));
        assertEquals(List.of(THEIRS), keptAside());
        limit(second, USUAL);
        assertEquals(USUAL, limit(onDisk()), "the next change is saved as ever");
    }

    @Test
    void readingsDoNotWaitForTheChoice() throws IOException {
        changeBoth();
        second.keep(reading(second.nextId()));
        assertEquals(List.of(), second.waiting());
        List<Reading> log = SurveyFolder.at(demo).read().log();
        assertEquals(log, second.log());
        assertEquals(1.25, log.get(log.size() - 1).positionM().value());
        assertEquals("folder.described-elsewhere", trouble());
    }

    private static Reading reading(String id) {
        return reading(id, "C1");
    }

    private static Reading reading(String id, String cove) {
        return new Reading(id, cove, new Typed("1.25", 1.25), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(new Typed("0.4580", 0.4580), new Typed("0.4103", 0.4103))), Optional.empty(), "", "", "", 0);
    }

    @Test
    void whoChangedNothingIsShownWhatTheOtherMadeOfIt() {
        limit(first, THEIRS);
        first.keep(reading(first.nextId()));
        first.close();
        second.tryAgain();
        assertEquals("", trouble());
        assertEquals(THEIRS, limit(second.survey()));
        assertEquals(first.log(), second.log());
        assertTrue(second.toKnow().stream().anyMatch(problem -> problem.key().equals("folder.described-anew")));
    }

    private String whyNotDone() {
        List<Outcome<Integer>> told = new ArrayList<>();
        second.onDisk(log -> 1, told::add);
        return told.get(0).problems().stream().map(Problem::key).findFirst().orElse("");
    }

    @Test
    void beforeOtherWorkIsDoneItIsShownWhatTheOtherMadeOfIt() {
        limit(first, THEIRS);
        first.close();
        assertEquals("folder.changed-meanwhile", whyNotDone());
        assertEquals(THEIRS, limit(second.survey()));
        assertEquals(THEIRS, limit(second.judgementProperty().get().survey()));
        assertEquals("", trouble());
        assertEquals("", whyNotDone(), "now it was seen");
    }

    @Test
    void beforeOtherWorkIsDoneTheReadingsOfTheOtherAreShown() {
        first.keep(reading(first.nextId()));
        first.close();
        assertEquals("folder.changed-meanwhile", whyNotDone());
        assertEquals(first.log(), second.log());
        assertEquals("", trouble());
        assertEquals("", whyNotDone());
    }

    @Test
    void beforeOtherWorkIsDoneTheChoiceIsOffered() throws IOException {
        limit(first, THEIRS);
        limit(second, OURS);
        first.close();
        assertEquals("folder.changed-meanwhile", whyNotDone());
        assertEquals("folder.described-elsewhere", trouble());
        assertEquals("folder.changed-meanwhile", whyNotDone(), "it waits for the choice");
        second.keepOurs();
        assertEquals("", whyNotDone());
        assertEquals(OURS, limit(onDisk()));
    }

    @Test
    void otherWorkThatTakesTheSurveyOverLeavesNoTroubleAndWritesWhatWaits() {
        second.keep(reading(second.nextId()));
        first.close();
        assertEquals("", whyNotDone());
        assertEquals("", trouble());
        assertEquals(List.of(), second.waiting());
    }

    @Test
    void otherWorkSeesWhatAnEditorMadeOfIt() throws IOException {
        second.close();
        second = first;
        editLimit(THEIRS);
        assertEquals("folder.changed-meanwhile", whyNotDone());
        assertEquals(THEIRS, limit(second.survey()));
        assertEquals("", whyNotDone());
    }

    private void editLimit(double steps) throws IOException {
        Path file = demo.resolve("survey.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\"neighbourSteps\": *[0-9.]+", "\"neighbourSteps\": " + steps));
    }

    /** The cove in which a reading waits is gone from the other description. */
    private void readInACoveThatTheOtherTakesAway() {
        first.close();
        second.tryAgain();
        addACove(second);
        second.close();
        first = opened();
        second = opened();
        second.keep(reading(second.nextId(), "C9"));
        takeTheCoveAway(first);
        first.close();
    }

    @Test
    void readingsThatCannotStandInTheOtherDescriptionWaitForTheChoiceHoweverManyThereAre() throws IOException {
        readInACoveThatTheOtherTakesAway();
        second.tryAgain();
        for (int more = 1; more <= 3; more++) {
            assertEquals("folder.described-elsewhere", trouble());
            assertEquals(more, second.waiting().size());
            assertFalse(SurveyFolder.at(demo).read().refused());
            second.keep(reading(second.nextId(), "C9"));
        }
        second.keepOurs();
        assertEquals("", trouble());
        assertEquals(List.of(), second.waiting());
        assertFalse(SurveyFolder.at(demo).read().refused());
    }

    @Test
    void theyWaitTooWhereOtherWorkCameUponIt() throws IOException {
        readInACoveThatTheOtherTakesAway();
        assertEquals("folder.changed-meanwhile", whyNotDone());
        second.keep(reading(second.nextId(), "C9"));
        assertEquals("folder.described-elsewhere", trouble());
        assertEquals(2, second.waiting().size());
        assertFalse(SurveyFolder.at(demo).read().refused());
    }

    @Test
    void ofTheOtherDescriptionThatIsTakenTheNewestIsShown() throws IOException {
        changeBoth();
        second.keep(reading(second.nextId()));
        editLimit(THEIRS + 1);
        second.takeTheirs(why -> assertEquals(List.of(), why));
        assertEquals(THEIRS + 1, limit(second.survey()));
        assertEquals("", trouble());
    }

    /** A window whose disk is slow: what it is to do is done when the test says so. */
    private OpenSurvey slow(Deque<Runnable> later) {
        List<OpenSurvey> told = new ArrayList<>();
        new Opener(new Workers(later::add, Runnable::run, Runnable::run), () -> Holder.here("covewalk", Screens.EVENING))
                .open(demo, outcome -> told.add(outcome.value().orElseThrow()));
        later.remove().run();
        return told.get(0);
    }

    private static void doAll(Deque<Runnable> later) {
        while (!later.isEmpty()) {
            later.remove().run();
        }
    }

    @Test
    void whatIsChangedTwiceBeforeOtherWorkIsNoOtherDescription() throws IOException {
        first.close();
        Deque<Runnable> later = new ArrayDeque<>();
        second = slow(later);
        limit(second, THEIRS);
        limit(second, OURS);
        List<Outcome<Integer>> told = new ArrayList<>();
        second.onDisk(log -> 1, told::add);
        doAll(later);
        assertEquals(List.of(), told.get(0).problems());
        assertEquals(OURS, limit(onDisk()));
    }

    @Test
    void aChoiceThatCannotBeCarriedOutDoesNotDisturbAWrite() throws IOException {
        Deque<Runnable> later = new ArrayDeque<>();
        second = slow(later);
        limit(first, THEIRS);
        limit(second, OURS);
        first.close();
        doAll(later);
        second.tryAgain();
        doAll(later);
        Path inTheWay = Files.writeString(demo.resolve("originals"), "");
        second.takeTheirs(why -> assertEquals(List.of(), why));
        second.keep(reading(second.nextId()));
        later.remove().run(); // the choice, and a write comes after it
        assertEquals("folder.failed", trouble());
        second.keep(reading(second.nextId()));
        doAll(later);
        assertEquals(List.of(), second.waiting());
        assertEquals(SurveyFolder.at(demo).read().log(), second.log());
        Files.delete(inTheWay);
        second.takeTheirs(why -> assertEquals(List.of(), why));
        doAll(later);
        assertEquals("", trouble());
        assertEquals(THEIRS, limit(second.survey()));
    }

    @Test
    void oursIsNotKeptWhereTheOthersReadingsCannotStandInIt() throws IOException {
        addACove(first);
        first.keep(reading(first.nextId(), "C9"));
        limit(second, OURS);
        first.close();
        second.tryAgain();
        assertEquals("folder.described-elsewhere", trouble());
        second.keepOurs();
        assertEquals("log.no-cove", trouble());
        assertFalse(SurveyFolder.at(demo).read().refused());
        second.tryAgain();
        assertEquals("folder.described-elsewhere", trouble(), "there still is a choice");
        second.takeTheirs(why -> assertEquals(List.of(), why));
        assertEquals("", trouble());
        assertEquals(first.log(), second.log());
    }

    @Test
    void noDescriptionIsSavedInWhichTheOthersReadingsCannotStand() throws IOException {
        first.close();
        second.tryAgain();
        addACove(second);
        first = second;
        second = opened();
        first.keep(reading(first.nextId(), "C9"));
        first.close();
        takeTheCoveAway(second);
        second.tryAgain();
        assertEquals("log.no-cove", trouble());
        assertFalse(SurveyFolder.at(demo).read().refused());
        addACove(second);
        assertEquals("", trouble());
        assertEquals(first.log(), second.log());
    }

    /** A write that was reported as failed may have come through. */
    @Test
    void whatIsOnDiskAlreadyKeepsNoDescriptionFromBeingSaved() throws IOException {
        Reading reading = reading(second.nextId());
        second.keep(reading);
        limit(second, OURS);
        first.keep(reading);
        first.close();
        second.tryAgain();
        assertEquals("", trouble());
        assertEquals(List.of(), second.waiting());
        assertEquals(first.log(), second.log());
        assertEquals(OURS, limit(onDisk()));
    }

    private static void addACove(OpenSurvey survey) {
        Cove cove = new Cove("C9", "", 10, false, "", OptionalDouble.empty(), "", Optional.empty(), List.of(), List.of());
        assertEquals(List.of(), survey.change(now -> now.withCoves(Stream.concat(now.coves().stream(), Stream.of(cove)).toList())));
    }

    private static void takeTheCoveAway(OpenSurvey survey) {
        assertEquals(List.of(), survey.change(now -> now.withCoves(now.coves().stream().filter(cove -> !cove.id().equals("C9")).toList())));
    }

    @Test
    void bothDescribedAlikeIsNoChoice() throws IOException {
        limit(first, OURS);
        limit(second, OURS);
        first.close();
        second.tryAgain();
        assertEquals("", trouble());
        assertFalse(second.hasUnwritten());
        assertEquals(OURS, limit(onDisk()));
        assertFalse(Files.exists(demo.resolve("originals/survey.json")));
    }

    /** An editor asks for no lock. */
    @Test
    void aFileThatWasEditedWhileItWasOpenHereIsNotWrittenOverEither() throws IOException {
        second.close();
        editLimit(THEIRS);
        assertEquals(THEIRS, limit(onDisk()));
        limit(first, OURS);
        assertEquals("folder.described-elsewhere", first.troubleProperty().get().get(0).key());
        assertEquals(THEIRS, limit(onDisk()));
        assertEquals(OURS, limit(first.survey()));
    }

    @Test
    void otherSpacesAreNoOtherDescription() throws IOException {
        second.close();
        Path file = demo.resolve("survey.json");
        Files.writeString(file, Files.readString(file).replace("\n", "\n\n"));
        limit(first, OURS);
        assertEquals(List.of(), first.troubleProperty().get());
        assertEquals(OURS, limit(onDisk()));
    }
}
