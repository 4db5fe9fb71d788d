package covewalk.app.reels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.desk.Theme;
import covewalk.plot.StripFrame;
import covewalk.survey.Cove;
import covewalk.survey.Reel;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReelsModelTest {

    @TempDir
    Path folder;
    private Desk desk;
    private ReelsModel model;

    @BeforeEach
    void openTheDemonstration() {
        desk = Desks.withDemo(folder);
        model = new ReelsModel(desk);
    }

    private List<String> found() {
        return model.found().stream().map(Reel::id).toList();
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        R4                                   | R4      | a name is that reel and no other
        2631-W-2042                          | R3      | a serial
        (01)09501101530003(21)2631-W-2042    | R3      | a scanned label with that serial
        https://id.gs1.org/01/09501101530003/21/2618-T-0065 | R19 | the same as a link
        2618-t                               | R18 R19 | a part of the lot
        neutra 90                            | R18 R19 | a part of the product
        nowhere                              |         | nothing
        """)
    void reelsAreFoundByWhatIsOnThem(String typed, String ids, String why) {
        model.searchProperty().set(typed);
        assertEquals(ids == null ? List.of() : List.of(ids.split(" ")), found(), why);
    }

    @Test
    void enterLooksAtTheFirstFound() {
        model.searchProperty().set("2631-W-2041");
        model.enter();
        assertEquals("R2", model.chosen().orElseThrow().id());
        assertEquals("R2", model.form().line("id").textProperty().get());
        assertEquals("1 reel found", model.saysProperty().get());
    }

    @Test
    void whatIsKnownOfAReelIsPutTogether() {
        model.searchProperty().set("R2");
        model.enter();
        ReelFacts facts = model.factsProperty().get();
        assertEquals(List.of("C1 5.0-10.0"), facts.lies().stream().map(where -> where.cove().id() + " " + where.placement().fromM() + "-"
                + where.placement().toM()).toList());
        assertTrue(facts.faults().stream().allMatch(part -> part.fault().reels().contains("R2")));
        assertTrue(facts.faults().stream().anyMatch(part -> part.fault().positionM() == 5), "the demonstration's first bad joint");
        FactWords words = new FactWords(model.texts(), model.writing());
        assertEquals("Claimed: 3 steps of 2700 K (ANSI C78.377-2015/2017)", words.claim(facts.claim().orElseThrow()).get(0));
        assertTrue(words.measured(facts.stretches().get(0)).startsWith("Measured in cove C1, 5 m to 10 m: u' 0.2"), words.measured(facts.stretches().get(0)));
    }

    @Test
    void aFaultIsShownOnTheStrip() {
        model.show("C1", 5);
        assertEquals(new Spot("C1", 5), desk.spotProperty().get());
        assertEquals(Place.FAULTS, desk.placeProperty().get());
    }

    @Test
    void whoComesFromAPlaceOnTheStripSeesItsReel() {
        desk.spotProperty().set(new Spot("C1", 12));
        model.chooseAtSpot();
        assertEquals("R3", model.chosen().orElseThrow().id());
    }

    @Test
    void aLabelIsCorrectedHereAndFoundAsItIsNow() {
        model.searchProperty().set("R2");
        model.enter();
        model.form().line("serial").textProperty().set("NEW-1");
        model.form().takeAll();
        model.searchProperty().set("new-1");
        assertEquals(List.of("R2"), found());
    }

    @Test
    void withoutASurveyThereIsNothingToFind() {
        desk.close();
        assertEquals(List.of(), found());
    }

    /** A light band in the dark would light the ceiling that is measured. */
    @Test
    void theStripIsDrawnForTheLightThereIs() {
        Cove cove = desk.survey().survey().coves().get(0);
        desk.choose(desk.settings().with(Theme.DARK));
        assertEquals(StripFrame.On.DARK_SCREEN, model.frame(cove).on());
        model.searchProperty().set("R4");
        model.enter();
        ReelFacts before = model.factsProperty().get();
        desk.choose(desk.settings().with(Theme.LIGHT));
        assertEquals(StripFrame.On.SCREEN, model.frame(cove).on());
        assertNotSame(before, model.factsProperty().get(), "told anew, so that it is drawn anew");
    }
}
