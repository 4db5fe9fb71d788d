package covewalk.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.fail;

import covewalk.app.Screens;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.file.Holder;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
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
