package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Bounds;
import javafx.geometry.Dimension2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The walk in small windows below the bar that says what is not on disk, in German, with a question about what was typed. */
class BelowTheBarTest {

    /** 15 mm at 96 dpi. */
    private static final double GLOVE_PX = 57;

    enum Trouble { GONE, GONE_AND_ELSEWHERE, CHOICE, CHOICE_AND_ELSEWHERE }

    @TempDir
    Path folder;
    private Screens screens;
    private Path survey;

    @ParameterizedTest
    @CsvSource({"1024, 600, 100, GONE_AND_ELSEWHERE", "1024, 600, 150, GONE_AND_ELSEWHERE", "1024, 600, 200, GONE_AND_ELSEWHERE",
        "1024, 600, 200, CHOICE_AND_ELSEWHERE", "600, 1024, 200, CHOICE_AND_ELSEWHERE", "800, 480, 100, GONE", "800, 480, 200, CHOICE",
        "800, 480, 100, GONE_AND_ELSEWHERE", "800, 480, 200, CHOICE_AND_ELSEWHERE", "480, 700, 100, CHOICE_AND_ELSEWHERE",
        "480, 400, 100, GONE", "480, 400, 100, CHOICE_AND_ELSEWHERE"})
    void nothingOverlapsOrIsCutOff(double width, double height, int percent, Trouble trouble) throws IOException {
        Settings large = new Settings(Theme.DARK, percent, Locale.GERMAN, false, false);
        try (Screens opened = Screens.open(large, new Dimension2D(width, height))) {
            screens = opened;
            survey = NewSurvey.in(folder);
            screens.survey(survey);
            screens.interact(() -> screens.desk().go(Place.WALK));
            screens.until(() -> screens.<Labeled>find("#walk-where").getText().startsWith("Voute C1"));
            type("45804103");
            screens.until(() -> screens.desk().survey().log().size() == 1);
            begin(trouble);
            type("41034580");
            screens.until(() -> screens.find("#walk-question").isVisible());
            screens.picture(String.format(Locale.ROOT, "below-%.0fx%.0f-%d-%s", width, height, percent, trouble));
            everythingHasItsPlace(new Rectangle2D(0, 0, width, height));
            theOtherPlacesEndInTheWindow(new Rectangle2D(0, 0, width, height));
            screens.interact(() -> screens.desk().go(Place.WALK));
            screens.rest();
            if (height > 450) { // a lower window has keys as high as there is room for, and the fields come before the question
                isInSight("#walk-question");
                screens.lookup(".pad-key").queryAll().forEach(this::isForAGlove);
            }
        }
    }

    private void begin(Trouble trouble) throws IOException {
        if (trouble == Trouble.GONE || trouble == Trouble.GONE_AND_ELSEWHERE) {
            Files.move(survey, folder.resolve("pulled"));
            type("45814103");
            screens.until(() -> screens.find("#trouble").isVisible());
            assertFalse(screens.mayClose());
            screens.until(() -> screens.find("#trouble-lose").isVisible());
        } else {
            Path description = survey.resolve("survey.json");
            Files.writeString(description, Files.readString(description).replace("\"neighbourSteps\": 2.0", "\"neighbourSteps\": 4.0"));
            screens.interact(() -> screens.desk().survey().change(now -> now.with(now.limits().withNeighbourSteps(7))));
            screens.until(() -> screens.find("#trouble-theirs").isVisible());
        }
        if (trouble == Trouble.GONE_AND_ELSEWHERE || trouble == Trouble.CHOICE_AND_ELSEWHERE) {
            screens.clickOn("#trouble-elsewhere");
            screens.interact(() -> screens.find("#walk-first").requestFocus());
        }
        screens.until(() -> !screens.desk().survey().judgingProperty().get());
    }

    private void type(String digits) {
        for (char digit : digits.toCharArray()) {
            screens.write(digit);
            screens.rest();
        }
        screens.push(KeyCode.ENTER);
        screens.rest();
    }

    private void everythingHasItsPlace(Rectangle2D window) {
        Node column = screens.find(".walk-reading").getParent().getParent();
        List<Node> blocks = new ArrayList<>(List.of(screens.find("#trouble"), screens.find(".places"), screens.find(".number-pad")));
        for (String block : List.of(".walk-actions", "#walk-strip")) {
            Node node = screens.find(block);
            if (node.getParent() != column) {
                blocks.add(node);
            }
        }
        List<Rectangle2D> rooms = new ArrayList<>(blocks.stream().map(this::bounds).toList());
        rooms.add(bounds(screens.find(".walk > .scroll-pane")));
        for (Rectangle2D room : rooms) {
            assertTrue(window.contains(room), "in the window: " + room);
            rooms.stream().filter(other -> other != room).forEach(other -> assertFalse(overlap(room, other), room + " over " + other));
        }
        screens.lookup(".pad-key").queryAll().forEach(key -> assertTrue(bounds(screens.find(".number-pad")).contains(bounds(key)), "a key: " + key));
        List.of("#walk-first", "#walk-second", "#walk-lux").forEach(this::isInSight);
        screens.lookup(".walk-reading > *").queryAll().forEach(BelowTheBarTest::isWhole);
        screens.lookup(".trouble > *").queryAll().forEach(BelowTheBarTest::isWhole);
        screens.lookup(".walk-actions > .button").queryAll().forEach(this::itsWordsAreWhole);
        screens.lookup(".place").queryAll().forEach(this::itsWordsAreWhole);
    }

    private void theOtherPlacesEndInTheWindow(Rectangle2D window) {
        for (Place place : Place.values()) {
            screens.interact(() -> screens.desk().go(place));
            screens.rest();
            screens.picture(String.format(Locale.ROOT, "below-%.0fx%.0f-%s", window.getWidth(), window.getHeight(), place));
            Node page = ((BorderPane) screens.find(".places").getScene().getRoot()).getCenter();
            assertTrue(window.contains(bounds(page)), place + " ends in the window: " + bounds(page));
        }
    }

    private void isInSight(String query) {
        Rectangle2D room = bounds(screens.find(".walk > .scroll-pane"));
        assertTrue(room.contains(bounds(screens.find(query))), query + " in sight: " + bounds(screens.find(query)) + " in " + room);
    }

    private void isForAGlove(Node key) {
        assertTrue(Math.min(bounds(key).getWidth(), bounds(key).getHeight()) >= GLOVE_PX, "a key: " + bounds(key));
    }

    private static void isWhole(Node part) {
        if (part.isManaged()) {
            double needed = ((Region) part).prefHeight(((Region) part).getWidth());
            assertTrue(((Region) part).getHeight() >= needed - 0.5, "as high as its words: " + part + " " + needed);
        }
    }

    private void itsWordsAreWhole(Node button) {
        Labeled labeled = (Labeled) button;
        for (Node words : labeled.lookupAll(".text")) {
            assertTrue(bounds(button).contains(bounds(words)), "whole: " + bounds(words) + " in " + button + bounds(button));
            assertEquals(labeled.getText().replaceAll("\\s", ""), ((Text) words).getText().replaceAll("\\s", ""));
        }
    }

    private static boolean overlap(Rectangle2D one, Rectangle2D other) {
        double across = Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX());
        double down = Math.min(one.getMaxY(), other.getMaxY()) - Math.max(one.getMinY(), other.getMinY());
        return across > 1 && down > 1; // edges at parts of a pixel are rounded
    }

    /** As laid out: the ring of the focus lies outside. */
    private Rectangle2D bounds(Node node) {
        Bounds bounds = node.localToScene(node.getLayoutBounds());
        return new Rectangle2D(bounds.getMinX(), bounds.getMinY(), bounds.getWidth(), bounds.getHeight());
    }
}
