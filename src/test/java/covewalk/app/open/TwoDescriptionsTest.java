package covewalk.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        return new Reading(id, "C1", new Typed("1.25", 1.25), Role.WALK, "A", 1,
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
        Path file = demo.resolve("survey.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\"neighbourSteps\": *[0-9.]+", "\"neighbourSteps\": 4.0"));
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
