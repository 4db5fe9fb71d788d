package covewalk.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import covewalk.app.DemoDesk;
import covewalk.app.DriftingSurvey;
import covewalk.app.Screens;
import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.limit.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeskTest {

    @TempDir
    Path folder;

    @Test
    void twoDesksOfOneSittingShowTheSame() {
        Desk one = Desks.empty();
        Desk other = one.another();
        Desks.open(one, Screens.demo(folder));
        other.go(Place.FAULTS);
        assertNotNull(other.survey());
        assertSame(one.survey(), other.survey());
        assertEquals(Place.FAULTS, one.placeProperty().get());
        assertEquals(Place.FAULTS, one.memoryProperty().get().place());
    }

    @Test
    void aSecondClickOnASurveyThatIsBeingOpenedFindsNoLockHeld() {
        Deque<Runnable> later = new ArrayDeque<>();
        Workers slow = new Workers(later::add, Runnable::run, Runnable::run);
        Desk desk = new Desk(new Opener(slow, () -> Holder.here("covewalk", Screens.EVENING)), slow, Screens.EVENING, Memory.blank());
        Path demo = Screens.demo(folder);
        desk.open(demo, refused -> fail(refused.toString()));
        desk.open(demo, refused -> fail(refused.toString()));
        while (!later.isEmpty()) {
            later.remove().run();
        }
        assertEquals(List.of(), desk.survey().troubleProperty().get());
    }

    @Test
    void noOtherSurveyIsOpenedOrBegunWhileSomethingWouldBeLost() throws IOException {
        Desk desk = Desks.withDemo(folder);
        OpenSurvey before = desk.survey();
        Path other = Screens.demo(Files.createDirectory(folder.resolve("other")));
        Files.move(before.folder(), folder.resolve("pulled"));
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        List<String> told = new ArrayList<>();
        desk.open(other, refused -> told.add(refused.get(0).key()));
        desk.create(folder.resolve("fresh"), before.survey(), List.of(), refused -> told.add(refused.get(0).key()));
        assertEquals(List.of("folder.unwritten", "folder.unwritten"), told);
        assertSame(before, desk.survey());
        assertEquals(1, desk.survey().waiting().size());
    }

    @Test
    void whatIsTypedWhileASurveyIsMovedGoesAlong() throws IOException {
        Deque<Runnable> later = new ArrayDeque<>();
        Workers slow = new Workers(later::add, Runnable::run, Runnable::run);
        Desk desk = new Desk(new Opener(slow, () -> Holder.here("covewalk", Screens.EVENING)), slow, Screens.EVENING, Memory.blank());
        desk.open(Screens.demo(folder), refused -> fail(refused.toString()));
        later.remove().run();
        Files.move(desk.survey().folder(), folder.resolve("pulled"));
        desk.keepElsewhere(folder.resolve("other"), refused -> fail(refused.toString()));
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        while (!later.isEmpty()) {
            later.remove().run();
        }
        assertEquals(folder.resolve("other"), desk.survey().folder());
        assertEquals(List.of(), desk.survey().waiting());
        List<Reading> log = SurveyFolder.at(folder.resolve("other")).read().log();
        assertEquals(4.4, log.get(log.size() - 1).positionM().value());
    }

    /** Remembered as a survey in which a drift is taken off, it was judged with the drift left in first. */
    @Test
    void aSurveyIsJudgedOnceWhenItIsOpened() throws IOException {
        Path drifting = DriftingSurvey.in(folder.resolve("drifting"));
        List<Runnable> sums = new ArrayList<>();
        Workers counted = new Workers(Runnable::run, sum -> {
            sums.add(sum);
            sum.run();
        }, Runnable::run);
        Desk desk = new Desk(new Opener(counted, () -> Holder.here("covewalk", Screens.EVENING)), counted, Screens.EVENING,
                Memory.blank().opened(drifting).withDrift(drifting, true));
        desk.open(drifting, refused -> fail(refused.toString()));
        assertEquals(1, sums.size());
        assertEquals(0, desk.survey().judgementProperty().get().faults().stream().filter(fault -> fault.verdict() == Verdict.BEYOND).count(),
                "the step between its reels is the drift");
        desk.survey().correctDriftProperty().set(false);
        assertEquals(2, sums.size());
        assertEquals(Set.of(), desk.memoryProperty().get().withoutDrift());
    }

    @Test
    void whatWasChosenAboutADriftHoldsInAnotherFolderToo() throws IOException {
        Desk desk = Desks.empty();
        Desks.open(desk, DriftingSurvey.in(folder.resolve("drifting")));
        desk.survey().correctDriftProperty().set(true);
        desk.keepElsewhere(folder.resolve("other"), refused -> fail(refused.toString()));
        assertEquals(folder.resolve("other"), desk.survey().folder());
        assertTrue(desk.survey().correctDriftProperty().get());
        assertTrue(desk.memoryProperty().get().withoutDrift().contains(folder.resolve("other").toAbsolutePath().normalize()));
    }

    @Test
    void aDeskThatWasLeftLetsGoOfTheSurveyAndHearsNothing() {
        Desk stays = Desks.withDemo(folder);
        Desk left = stays.another();
        List<Object> heard = new ArrayList<>();
        left.placeProperty().addListener((property, before, now) -> heard.add(now));
        left.memoryProperty().addListener((property, before, now) -> heard.add(now));
        left.spotProperty().addListener((property, before, now) -> heard.add(now));
        left.leave();
        stays.go(Place.REELS);
        assertNull(left.survey());
        assertNotNull(stays.survey(), "it stays open");
        assertEquals(List.of(), heard);
    }

    @Test
    void whatADeskThatWasLeftIsStillAskedForIsDoneAllTheSame() {
        Desk stays = Desks.empty();
        Desk left = stays.another();
        left.leave();
        Desks.open(stays, Screens.demo(folder));
        left.close();
        assertNull(stays.survey());
    }
}
