package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Spot;
import covewalk.app.desk.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Bounds;
import javafx.geometry.Dimension2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The smallest tablets, both ways up, at the usual and at the largest text, in the language with the longer words: all can be touched. */
class SmallTabletTest {

    @TempDir
    Path folder;
    private Screens screens;

    @ParameterizedTest
    @CsvSource({"1024, 600, 100, DARK", "1024, 600, 200, LIGHT", "600, 1024, 100, CONTRAST", "600, 1024, 200, DARK"})
    void nothingThatIsNeededIsCutOff(double width, double height, int percent, Theme theme) throws IOException {
        Settings settings = new Settings(theme, percent, Locale.GERMAN, false, false);
        try (Screens opened = Screens.open(settings, new Dimension2D(width, height))) {
            screens = opened;
            Path demo = Screens.demo(folder);
            screens.survey(demo);
            screens.interact(() -> screens.desk().spotProperty().set(new Spot("C1", 17)));
            String name = String.format(Locale.ROOT, "small-%.0fx%.0f-%d", width, height, percent);
            for (Place place : List.of(Place.REELS, Place.REPORT, Place.SITE, Place.SURVEYS)) {
                screens.interact(() -> screens.desk().go(place));
                screens.picture(name + "-" + place.code());
                nothingSticksOut(place, width);
                if (place == Place.REELS && screens.find("#reel-choose").isVisible()) {
                    screens.clickOn("#reel-choose");
                    screens.picture(name + "-reel");
                    nothingSticksOut(place, width);
                }
            }
            assertTrue(bounds("new-site").getMaxX() <= width, "a field: " + bounds("new-site"));
            assertTrue(bounds("recent-0-forget").getMaxX() <= width, "a button: " + bounds("recent-0-forget"));
            screens.interact(() -> screens.desk().go(Place.FAULTS));
            screens.picture(name + "-faults");
            double least = 17 * 15 * percent / 100.0;
            assertTrue(bounds("faults-list").getWidth() >= least, "place and steps have room: " + bounds("faults-list") + " " + least);
            withoutItsDisk(demo, width, height, name);
        }
    }

    private void nothingSticksOut(Place place, double width) {
        assertTrue(bounds("place-report").getMaxX() <= width, place + ", the last place: " + bounds("place-report"));
        Parent page = (Parent) screens.<BorderPane>find(".shell").getCenter();
        for (Node part : page.getChildrenUnmodifiable()) {
            assertTrue(part.localToScene(part.getLayoutBounds()).getMaxX() <= width + 0.5, place + ": " + part + part.getBoundsInParent());
        }
        for (Node node : screens.lookup(".scroll-pane").queryAll()) {
            ScrollPane pane = (ScrollPane) node;
            if (!pane.isVisible()) {
                continue; // nothing is wrong, so nothing is told
            }
            double content = pane.getContent() == null ? 0 : pane.getContent().getLayoutBounds().getWidth();
            assertTrue(content <= pane.getViewportBounds().getWidth() + 1, place + ": " + content + " in " + pane.getViewportBounds() + " " + pane);
        }
    }

    private void withoutItsDisk(Path demo, double width, double height, String name) throws IOException {
        Files.move(demo, folder.resolve("pulled"));
        screens.interact(() -> DemoDesk.read(screens.desk(), "C1", 4.4, "0.4577", "0.4110"));
        screens.until(() -> !screens.desk().survey().troubleProperty().get().isEmpty());
        screens.mayClose();
        screens.until(() -> screens.find("#trouble-lose").isVisible());
        screens.interact(() -> screens.desk().go(Place.WALK));
        screens.until(() -> !screens.desk().survey().judgingProperty().get());
        screens.picture(name + "-trouble");
        assertTrue(bounds("trouble").getHeight() < 0.25 * height, "it leaves room: " + bounds("trouble"));
        assertTrue(bounds("walk-where").getMinY() >= bounds("walk-strip").getMaxY() - 0.5, "the words below the strip");
        double below = Math.min(bounds("walk-back").getMinY(), width > height ? height : bounds("pad-7").getMinY());
        assertTrue(bounds("walk-take-back").getMaxY() <= below + 0.5, "above what is below: " + bounds("walk-take-back") + " " + below);
        assertTrue(bounds("walk-back").getMaxY() <= height && bounds("place-report").getMaxY() <= height, "all in the window");
    }

    /** As laid out: the ring of the focus lies outside. */
    private Bounds bounds(String id) {
        Node node = screens.find("#" + id);
        return node.localToScene(node.getLayoutBounds());
    }
}
