package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.survey.Reading;
import java.nio.file.Path;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The walk as a person does it: typed, or touched. */
class WalkScreenTest {

    /** 15 mm at 96 dpi. */
    private static final double GLOVE_PX = 57;

    @TempDir
    Path folder;
    private Screens screens;
    private int keys;

    @BeforeEach
    void open() {
        screens = Screens.open();
        screens.size(1024, 600);
        screens.survey(NewSurvey.in(folder));
        screens.interact(() -> screens.desk().go(Place.WALK));
        screens.until(() -> text("walk-where").startsWith("Cove C1"));
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private String text(String id) {
        return screens.<Labeled>find("#" + id).getText();
    }

    private String typed(String id) {
        return screens.<TextField>find("#" + id).getText();
    }

    /** As laid out: the ring of the focus lies outside. */
    private Bounds bounds(String id) {
        Node node = screens.find("#" + id);
        return node.localToScene(node.getLayoutBounds());
    }

    private int kept() {
        return screens.desk().survey().log().size();
    }

    private void key(String digits, KeyCode last) {
        for (char digit : digits.toCharArray()) {
            screens.write(digit);
            screens.rest();
            keys++;
        }
        screens.push(last);
        keys++;
        screens.rest();
    }

    /** Nothing but digits and Enter from the first station to the faults of the last cove. */
    @Test
    void aCoveIsTypedByTheKeyboardAloneWithNineKeysAReading() {
        int readings = 0;
        while (text("walk-where").startsWith("Cove C1, ")) {
            key("45804103", KeyCode.ENTER);
            int now = ++readings;
            screens.until(() -> kept() == now);
        }
        assertEquals(9 * readings, keys);
        assertTrue(readings >= 6, "readings " + readings);
        assertTrue(text("walk-where").startsWith("Cove C1 is read: "));
        screens.until(() -> !screens.lookup("#walk-settle").queryAll().isEmpty() || !screens.desk().survey().judgingProperty().get());
        screens.picture("walk-end");
        screens.push(KeyCode.ENTER);
        screens.until(() -> text("walk-where").startsWith("Cove C2, 0.25 m"));
    }

    @Test
    void aCoveIsTouchedOnThePadAlone() {
        screens.survey(NewSurvey.shortIn(folder.resolve("short")));
        screens.until(() -> text("walk-where").startsWith("Cove C1, 0."));
        int readings = 0;
        while (text("walk-where").startsWith("Cove C1, ")) {
            for (char digit : "45804103".toCharArray()) {
                screens.clickOn("#pad-" + digit);
                screens.rest();
            }
            screens.clickOn("#pad-enter");
            int now = ++readings;
            screens.until(() -> kept() == now);
        }
        Reading last = screens.desk().survey().log().get(readings - 1);
        assertEquals("0.4580", last.colour().orElseThrow().xy().orElseThrow().first().text());
        screens.clickOn("#pad-enter");
        screens.until(() -> text("walk-where").startsWith("Cove C2, 0.25 m"));
    }

    @Test
    void theDemonstrationGoesOnWhereItsVerdictsAskForMore() {
        screens.survey(Screens.demo(folder));
        screens.until(() -> screens.desk().survey().folder().endsWith("reading-rooms") && text("walk-where").startsWith("Cove C"));
        screens.picture("walk-demo");
        assertTrue(text("walk-where").matches("Cove C5 is read: [0-9]+ stations\\."), text("walk-where"));
    }

    @Test
    void keptStandsThereInWordsForTwoSecondsAndNoLonger() {
        key("45804103", KeyCode.ENTER);
        screens.until(() -> text("walk-kept").equals("Kept, 0.2 m"));
        screens.until(() -> text("walk-kept").isEmpty());
        assertEquals(1, kept());
    }

    @Test
    void aSlipIsAskedAboutInThePageAndNothingElseIsBlocked() {
        key("41034580", KeyCode.ENTER);
        assertTrue(text("walk-question").endsWith("Enter once more keeps it as typed."), text("walk-question"));
        assertEquals("0.4103", typed("walk-first"));
        screens.picture("walk-slip");
        screens.push(KeyCode.BACK_SPACE);
        screens.rest();
        assertTrue(!screens.<Node>find("#walk-question").isVisible());
        assertEquals(0, kept());
    }

    @Test
    void duvTakesItsSignFromKeyboardAndPad() {
        screens.clickOn("#walk-more");
        screens.clickOn("#walk-shows-cct");
        screens.clickOn("#walk-more-done");
        keys = 0;
        key("2712-012", KeyCode.ENTER);
        assertEquals(9, keys);
        screens.until(() -> kept() == 1);
        assertEquals("-0.0012", screens.desk().survey().log().get(0).colour().orElseThrow().cctDuv().orElseThrow().second().text());
        for (String pad : new String[] {"2", "7", "1", "2", "sign", "0", "1", "2", "enter"}) {
            screens.clickOn("#pad-" + pad);
            screens.rest();
        }
        screens.until(() -> kept() == 2);
        assertEquals("-0.0012", screens.desk().survey().log().get(1).colour().orElseThrow().cctDuv().orElseThrow().second().text());
    }

    @Test
    void theFirstDigitFindsItsFieldWhateverWasTouchedBefore() {
        screens.clickOn("#walk-skip");
        key("45804103", KeyCode.ENTER);
        screens.until(() -> kept() == 1);
        screens.clickOn("#walk-take-back");
        screens.until(() -> kept() == 2);
        key("45814103", KeyCode.ENTER);
        screens.until(() -> kept() == 3);
    }

    @Test
    void everyActionCanBeTaken() {
        key("45804103", KeyCode.ENTER);
        screens.until(() -> kept() == 1);
        screens.clickOn("#walk-note").clickOn("#walk-note-2");
        key("45814103", KeyCode.ENTER);
        screens.until(() -> kept() == 2);
        assertEquals("diffuser missing", screens.desk().survey().log().get(1).note());
        screens.clickOn("#walk-reference");
        key("45804103", KeyCode.ENTER);
        screens.until(() -> kept() == 3);
        screens.clickOn("#walk-more");
        screens.picture("walk-more");
        screens.clickOn("#walk-position").write("1,23").push(KeyCode.ENTER);
        screens.until(() -> text("walk-where").startsWith("Cove C1, 1.23 m"));
        screens.clickOn("#walk-more").clickOn("#walk-correct");
        screens.picture("walk-correct");
        screens.clickOn("#walk-correct-earlier").clickOn("#walk-correct-earlier").clickOn("#walk-correct-this");
        screens.rest();
        key("45824103", KeyCode.ENTER);
        screens.until(() -> kept() == 4);
        assertEquals("1", screens.desk().survey().log().get(3).replaces());
        screens.clickOn("#walk-more").clickOn("#walk-dark");
        screens.rest();
        screens.picture("walk-dark");
        key("441242531", KeyCode.ENTER);
        screens.until(() -> kept() == 5);
        String before = text("walk-where");
        screens.push(KeyCode.PAGE_UP);
        screens.rest();
        assertTrue(text("walk-where").startsWith("Cove C1, ") && !text("walk-where").equals(before), text("walk-where"));
    }

    @Test
    void keysOfThePadFitAGloveAndNothingIsCutOff() {
        for (double[] size : new double[][] {{1024, 600}, {1920, 1080}, {800, 1280}}) {
            screens.size(size[0], size[1]);
            screens.rest();
            for (String id : new String[] {"pad-7", "pad-enter", "walk-back", "walk-more", "walk-first", "walk-second", "walk-take-back"}) {
                Bounds bounds = bounds(id);
                assertTrue(bounds.getMaxX() <= size[0] && bounds.getMaxY() <= size[1] && bounds.getMinY() >= 0, id + " " + bounds);
                double least = id.startsWith("pad") ? GLOVE_PX : 44;
                assertTrue(bounds.getHeight() >= least - 0.5, id + " " + bounds);
            }
            Bounds key = bounds("pad-7");
            assertTrue(key.getWidth() >= GLOVE_PX, key.toString());
            assertTrue(bounds("pad-enter").getHeight() > 2 * key.getHeight(), size[0] + ": " + bounds("pad-enter") + " " + key);
            key("41034580", KeyCode.ENTER);
            assertTrue(screens.<Node>find("#walk-question").isVisible(), size[0] + ": " + typed("walk-first") + " " + typed("walk-second") + " kept " + kept() + " focus "
                    + screens.find("#walk-first").getScene().getFocusOwner());
            assertTrue(bounds("walk-take-back").getMaxY() <= Math.min(bounds("walk-back").getMinY(), size[0] > size[1] ? 9999 : key.getMinY()),
                    "the longest question leaves room for the rest at " + size[0]);
            for (int i = 0; i < 8; i++) {
                screens.push(KeyCode.BACK_SPACE);
            }
        }
    }

    @Test
    void pictures() {
        key("45804103", KeyCode.ENTER);
        key("45814104", KeyCode.ENTER);
        key("45894098", KeyCode.ENTER);
        screens.until(() -> kept() == 3 && text("walk-sentence").contains("steps"));
        screens.picture("walk-1024");
        screens.size(1920, 1080);
        screens.picture("walk-1920");
        screens.size(800, 1280);
        screens.picture("walk-800");
        screens.size(1024, 600);
        screens.clickOn("#walk-note");
        screens.picture("walk-note");
        screens.push(KeyCode.ESCAPE);
        key("43004100", KeyCode.ENTER);
        screens.picture("walk-question");
        screens.interact(() -> screens.desk().choose(screens.desk().settings().with(covewalk.app.desk.Theme.LIGHT)));
        screens.picture("walk-light");
        screens.interact(() -> screens.desk().choose(screens.desk().settings().with(java.util.Locale.GERMAN)));
        screens.until(() -> text("walk-where").startsWith("Voute C1"));
        screens.picture("walk-german");
        screens.interact(() -> screens.desk().choose(screens.desk().settings().withTextPercent(150)));
        screens.picture("walk-150");
        screens.interact(() -> screens.desk().choose(screens.desk().settings().withTextPercent(200).with(covewalk.app.desk.Theme.CONTRAST)));
        screens.picture("walk-200");
    }
}
