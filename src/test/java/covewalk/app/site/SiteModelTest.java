package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.forms.Form;
import covewalk.app.forms.FormLine;
import covewalk.survey.Survey;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteModelTest {

    @TempDir
    Path folder;
    private Desk desk;
    private SiteModel model;

    @BeforeEach
    void openTheDemonstration() {
        desk = Desks.withDemo(folder);
        model = new SiteModel(desk);
        model.setUps().choose(0);
        model.reels().choose(0);
        model.sectionProperty().set(Section.cove(0));
        model.cove().placements().choose(0);
        model.cove().feeds().choose(0);
    }

    private Survey survey() {
        return desk.survey().survey();
    }

    private Form<?> form(String name) {
        return List.of(model.forms().site(), model.forms().visit(), model.forms().claim(), model.forms().limits(), model.forms().setUp(),
                model.forms().reel(), model.cove().form(),
                model.cove().placement(), model.cove().feed()).stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    private FormLine type(String form, String line, String text) {
        FormLine typed = form(form).line(line);
        typed.textProperty().set(text);
        form(form).take(typed);
        return typed;
    }

    @ParameterizedTest(name = "{0}.{1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        site      | name            | Weir House               | Weir House               | as typed
        visit     | date            | 5.10.2026                | 2026-10-05               | day first with points
        visit     | date            | 2026-1-5                 | 2026-01-05               | year first
        visit     | date            | ''                       | ''                       | nobody has to say
        visit     | minutesOn       | 90                       | 90                       | a whole number
        visit     | purpose         | warranty                 | warranty                 | a choice
        claim     | symptom         | one end pink             | one end pink             | the claimant's words
        limits    | neighbourSteps  | 2,5                      | 2.5                      | a decimal comma
        limits    | targetSteps     | ''                       | ''                       | nothing is judged against a target then
        limits    | errorPer        | survey                   | survey                   | a choice
        limits    | stepRule        | ellipse                  | ellipse                  | a choice
        setup     | calibrationDue  | 2027-03-01               | 2027-03-01               | a day
        setup     | repeatabilityUv | ''                       | ''                       | left empty: assumed
        setup     | absoluteUv      | 0.002                    | 0.002                    | declared
        setup     | smearM          | 50 mm                    | 0.05 m                   | another unit
        setup     | reads           | wash                     | wash                     | a choice
        setup     | leastLux        | 5                        | 5                        | a number
        reel      | serial          | (01)09501101530003(21)S77 | S77                     | a scanned label fills in all it says
        placement | reel            | 2631-W-2041              | R2                       | by the serial on its label
        reel      | nominalCct      | 3000                     | 3000                     | a whole number
        reel      | lengthM         | 16' 5"                   | 5.004 m                  | feet and inches, shown to the millimetre
        reel      | claimedCentre   | x 0,4578 y 0,4101        | x 0.4578 y 0.4101        | a colour by x and y
        cove      | target          | 3000 K Duv -0,001        | 3000 K Duv \u22120.001   | a colour by CCT and Duv
        cove      | target          | 3000                     | 3000 K Duv 0             | on the locus unless somebody says otherwise
        cove      | heightM         | 11'                      | 3.353 m                  | feet
        cove      | closed          | true                     | true                     | a tick
        cove      | lengthM         | 25                       | 25 m                     | longer
        placement | toM             | 4,9                      | 4.9 m                    | an end, its neighbour where it was
        placement | toM             | 5,5                      | 5.5 m                    | its neighbour gives way
        placement | knownFrom       | as-built                 | as-built                 | a choice
        feed      | atM             | 30 cm                    | 0.3 m                    | a position
        """)
    void whatIsTypedStandsInTheFileAndIsShownAsRead(String form, String line, String typed, String shown, String why) throws IOException {
        FormLine there = type(form, line, typed);
        assertEquals("", there.troubleProperty().get(), why);
        assertEquals(shown, there.textProperty().get(), why);
        assertEquals(survey(), SurveyFolder.at(desk.survey().folder()).read().survey().orElseThrow());
    }

    @ParameterizedTest(name = "{0}.{1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        visit     | date            | 31.2.2026     | no date             | no such day
        visit     | date            | 10/05/2026    | no date             | read in two ways
        visit     | minutesOn       | 55.5          | no whole number     | half a minute
        visit     | minutesOn       | -1            | 0 to 10000000       | before it was lit
        limits    | neighbourSteps  | ''            | cannot be empty     | a survey needs a limit
        limits    | neighbourSteps  | 0             | above 0             | no difference at all
        limits    | neighbourSteps  | two           | no number           | a word
        limits    | neighbourSteps  | 1.000,5       | no number           | both marks
        limits    | errorRate       | 0.5           | between 0 and 0.5   | a coin does as well
        setup     | id              | ''            | cannot be empty     | readings name it
        setup     | id              | B             | readings stand      | readings name the old one
        setup     | repeatabilityUv | 1             | above 0             | no such meter
        setup     | dimPercent      | 101           | above 0             | more than full
        reel      | id              | R2            | taken               | two of one name
        reel      | id              | ''            | cannot be empty     | placements name it
        reel      | nominalCct      | 27OO          | no number           | letters for zeros
        reel      | nominalCct      | 27000         | 1000 to 20000       | a zero too many
        reel      | lengthM         | 5 yards       | no length           | a unit nobody marks reels in
        reel      | claimedCentre   | pink          | no colour           | a word
        reel      | claimedCentre   | 0.4578        | no colour           | x without y
        reel      | claimedCentre   | 0.9 0.9       | exceed 1            | no light has it
        cove      | id              | C2            | taken               | two of one name
        cove      | id              | Hall          | readings stand      | readings name the old one
        cove      | lengthM         | 12            | the cove is 12 m    | a placement ends behind it
        cove      | lengthM         | -3            | no length           | less than nothing
        cove      | lengthM         | 1e999         | no length           | endless
        cove      | target          | 27000 K       | 1000 to 20000       | a slip of the finger
        placement | reel            | R99           | no reel R99         | a reel that is not there
        placement | toM             | 0             | not beyond          | an end at its start
        placement | toM             | 11            | overlap             | beyond its neighbour
        feed      | atM             | door          | no length           | a word
        """)
    void whatCannotBeStaysAsTypedWithTheReasonAtItsLine(String form, String line, String typed, String says, String why) {
        Survey before = survey();
        FormLine there = type(form, line, typed);
        String trouble = there.troubleProperty().get();
        assertTrue(trouble.contains(says.equals("overlap") ? "another still lies" : says), () -> why + ": " + trouble);
        assertEquals(typed, there.textProperty().get());
        assertEquals(before, survey());
    }

    @Test
    void aLineThatCannotBeReadHoldsUpNoOther() {
        FormLine wrong = type("visit", "date", "yesterday");
        type("visit", "inspector", "A. Lund");
        assertEquals("A. Lund", survey().visit().inspector());
        assertEquals("yesterday", wrong.textProperty().get());
        assertFalse(wrong.troubleProperty().get().isEmpty());
    }

    @Test
    void whatLooksWrongIsTakenAndSaidAtItsLine() {
        FormLine due = type("setup", "calibrationDue", "2020-01-01");
        assertTrue(due.remarkProperty().get().contains("calibration was due"), due.remarkProperty().get());
        assertEquals("2020-01-01", survey().setUps().get(0).calibrationDue().orElseThrow().toString());
    }

    @Test
    void aReelThatGetsAnotherNameKeepsItsPlaces() {
        type("reel", "id", "West 1");
        assertEquals("West 1", survey().coves().get(0).placements().get(0).reel());
        assertEquals(List.of(), survey().coves().get(0).placements().stream().filter(placement -> placement.reel().equals("R1")).toList());
    }

    @Test
    void undoGoesBackStepByStepAndIsSaved() throws IOException {
        Survey before = survey();
        type("site", "name", "One");
        type("reel", "id", "West 1");
        model.undo();
        assertEquals("R1", survey().reels().get(0).id());
        model.undo();
        assertEquals(before, survey());
        assertEquals(before, SurveyFolder.at(desk.survey().folder()).read().survey().orElseThrow());
        assertFalse(model.description().canUndoProperty().get());
    }

    @Test
    void aCoveWithReadingsIsNotTakenOut() {
        model.removeCove();
        assertEquals(5, survey().coves().size());
        assertTrue(model.troubleProperty().get().contains("readings stand against it"), model.troubleProperty().get());
    }

    @Test
    void aNewCoveHasANameOfItsOwnAndIsGoneTo() {
        model.addCove();
        assertEquals("C6", survey().coves().get(5).id());
        assertEquals(Section.cove(5), model.sectionProperty().get());
        model.removeCove();
        assertEquals(5, survey().coves().size());
    }

    @Test
    void inFeetABareNumberIsFeet() {
        desk.choose(new Settings(Theme.DARK, 100, Locale.ENGLISH, true, false));
        FormLine height = type("cove", "heightM", "11");
        assertEquals("11 ft 0 in", height.textProperty().get());
        assertEquals(11 * 0.3048, survey().coves().get(0).heightM().orElseThrow(), 1e-9);
    }

    @Test
    void claimsAreAskedForOnlyWhereSomebodyClaims() {
        assertFalse(model.asksForClaim());
        type("visit", "purpose", "complaint");
        assertTrue(model.asksForClaim());
    }
}
