package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A survey described through the real screens without a mouse, and what goes wrong on the way. */
class DescribeByKeyboardTest {

    @TempDir
    Path folder;
    private Screens screens;
    private int keys;

    @BeforeEach
    void open() {
        screens = Screens.open();
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private void type(String text) {
        keys += text.length();
        screens.write(text);
    }

    private void press(KeyCode... codes) {
        keys++;
        screens.push(codes);
        screens.rest();
    }

    /** A scanner: fast, and no key of a person's. */
    private void scan(String label) {
        screens.interact(() -> ((TextInputControl) focused()).insertText(0, label));
        screens.push(KeyCode.ENTER);
        screens.rest();
    }

    private Node focused() {
        return screens.window(0).getScene().getFocusOwner();
    }

    private void focusIs(String id) {
        assertEquals(id, focused() == null ? "" : String.valueOf(focused().getId()));
    }

    private Survey survey() {
        return screens.desk().survey().survey();
    }

    private void begin() {
        screens.clickOn("#new-folder");
        screens.push(KeyCode.CONTROL, KeyCode.A);
        screens.write(folder.resolve("weir-house").toString());
        screens.clickOn("#new-site").write("Weir House");
        screens.push(KeyCode.ENTER);
        screens.until(() -> screens.desk().survey() != null && screens.desk().placeProperty().get() == Place.SITE);
    }

    private void section(int index) {
        screens.interact(() -> screens.<ListView<?>>find("#site-sections").getSelectionModel().select(index));
        screens.rest();
        screens.interact(() -> screens.find("#site-sections").requestFocus());
        press(KeyCode.ENTER);
    }

    private void addCove() {
        screens.interact(() -> screens.find("#cove-add").requestFocus());
        press(KeyCode.SPACE);
    }

    @Test
    void anEmptySurveyIsDescribedByTypingAndEnter() throws IOException {
        begin();
        focusIs("site-name");
        press(KeyCode.ENTER);
        type("1 Mill Lane");
        press(KeyCode.ENTER);
        press(KeyCode.ENTER); // the date is today's
        type("A. Lund");
        press(KeyCode.ENTER);
        type("45");
        press(KeyCode.ENTER);
        section(1);
        type("hand spectrometer");
        press(KeyCode.ENTER);
        type("BW-7");
        press(KeyCode.ENTER);
        section(2);
        type("2,5");
        press(KeyCode.ENTER);
        type("26 51 00, 2.3");
        press(KeyCode.ENTER);
        addCove();
        keys = 0;
        press(KeyCode.ENTER); // C1 will do
        type("12,5");
        press(KeyCode.ENTER);
        focusIs("lay-reel");
        scan("]d20109501101530003" + "10AB-1\u241d21S77");
        scan("https://id.gs1.org/01/09501101530003/10/AB-1/21/S78");
        scan("(01)09501101530003(10)AB-2(21)S79");
        screens.rest();
        screens.until(() -> !screens.desk().survey().hasUnwritten());
        Survey saved = SurveyFolder.at(folder.resolve("weir-house")).read().survey().orElseThrow();
        assertEquals(survey(), saved);
        assertEquals(List.of("1 Mill Lane", "A. Lund", "hand spectrometer", "BW-7", "26 51 00, 2.3"), List.of(saved.site().address(),
                saved.visit().inspector(), saved.setUps().get(0).meter(), saved.setUps().get(0).serial(), saved.limits().setBy()));
        assertEquals(45, saved.visit().minutesOn().orElseThrow());
        assertEquals(2.5, saved.limits().neighbourSteps());
        assertEquals(List.of("S77", "S78", "S79"), saved.reels().stream().map(Reel::serial).toList());
        assertEquals(List.of("R1 0.0-5.0", "R2 5.0-10.0", "R3 10.0-12.5"), saved.coves().get(0).placements().stream()
                .map(placement -> placement.reel() + " " + placement.fromM() + "-" + placement.toM()).toList());
    }

    /** The figures of docs/app.md: with a scanner, with lots typed, and with labels that nobody has yet. */
    @Test
    void aCoveOfThreeReelsTakesTenKeysAndAScanForEachReel() {
        begin();
        keys = 0;
        addCove();
        focusIs("cove-id");
        press(KeyCode.ENTER); // C1 will do
        type("12,5");
        press(KeyCode.ENTER);
        focusIs("lay-reel");
        int before = keys;
        press(KeyCode.ENTER);
        press(KeyCode.ENTER);
        press(KeyCode.ENTER);
        assertEquals(3, survey().coves().get(0).placements().size());
        assertEquals(7, before, "adding the cove, its length, and on to its reels");
        assertEquals(10, keys, "with three reels of which nothing is known yet");
    }

    @Test
    void aScannersSeparatorComesThroughTheKeyboard() {
        begin();
        addCove();
        screens.clickOn("#lay-reel");
        screens.write("010950110153000310AB");
        separator();
        screens.write("21S77");
        press(KeyCode.ENTER);
        assertEquals(List.of("AB", "S77"), List.of(survey().reels().get(0).lot(), survey().reels().get(0).serial()));
    }

    /** GS, as a scanner sends it for FNC1: a keyboard's Control and ]. */
    private void separator() {
        screens.interact(() -> focused().fireEvent(new KeyEvent(KeyEvent.KEY_TYPED, "\u001d", "",
                KeyCode.UNDEFINED, false, true, false, false)));
    }

    /** Lot (10) and serial (21) both end where FNC1 says so (GS1 General Specifications, 7.8; from memory). */
    @Test
    void aSeparatorComesThroughWhereTablesArePastedToo() {
        begin();
        section(3);
        screens.interact(() -> screens.find("#paste-text").requestFocus());
        screens.write("Code\n");
        for (String lot : List.of("AB", "AC")) {
            screens.write("010950110153000310" + lot);
            separator();
            screens.write("21S77\n");
        }
        screens.interact(() -> screens.<Button>find("#paste-add").fire());
        assertEquals(List.of("AB S77", "AC S77"), survey().reels().stream().map(reel -> reel.lot() + " " + reel.serial()).toList());
    }

    @Test
    void aTablePastedFromASpreadsheetBecomesReels() {
        begin();
        section(3);
        screens.interact(() -> {
            ClipboardContent table = new ClipboardContent();
            table.putString("Reel\tLot\tSerial\nW1\tA\t1\nW2\tA\t2\n");
            Clipboard.getSystemClipboard().setContent(table);
            screens.find("#paste-text").requestFocus();
        });
        press(KeyCode.CONTROL, KeyCode.V);
        press(KeyCode.TAB);
        focusIs("paste-add");
        press(KeyCode.SPACE);
        assertEquals(List.of("W1", "W2"), survey().reels().stream().map(Reel::id).toList());
    }

    @Test
    void aPastedRowIsLaidByOneTouch() {
        begin();
        addCove();
        section(3);
        screens.interact(() -> screens.<TextInputControl>find("#paste-text").setText("Reel;Length\nW1;3\nW2;1.9\n"));
        screens.interact(() -> screens.<Button>find("#paste-add").fire());
        screens.picture("site-row");
        screens.interact(() -> screens.<Button>find("#row-lay-C1").fire());
        assertEquals(List.of("W1 0.0-3.0", "W2 3.0-4.9"), survey().coves().get(0).placements().stream()
                .map(placement -> placement.reel() + " " + placement.fromM() + "-" + placement.toM()).toList());
    }

    @Test
    void aSlipIsSaidWhereItIsAndUndoIsAButton() {
        begin();
        addCove();
        screens.clickOn("#cove-lengthM");
        screens.push(KeyCode.CONTROL, KeyCode.A);
        screens.write("long");
        press(KeyCode.ENTER);
        focusIs("cove-lengthM");
        assertTrue(screens.<Label>find("#cove-lengthM-trouble").isVisible());
        screens.picture("site-slip");
        assertEquals(5, survey().coves().get(0).lengthM());
        screens.clickOn("#site-undo");
        assertEquals(0, survey().coves().size());
    }
}
