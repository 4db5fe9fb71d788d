package covewalk.app.surveys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import covewalk.app.desk.FolderText;
import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SurveysModelTest {

    @TempDir
    Path home;
    private Desk desk;
    private SurveysModel model;

    @BeforeEach
    void begin() {
        desk = Desks.empty();
        model = new SurveysModel(desk, home);
    }

    private List<String> known() {
        return model.recent().surveys().stream().map(known -> known.name() + ": " + known.says()).toList();
    }

    @Test
    void aSitesNameIsEnoughForANewSurvey() {
        model.fresh().siteProperty().set("  Weir House, 2nd floor ");
        Path folder = home.resolve("covewalk").resolve("2026-10-05-weir-house-2nd-floor");
        assertEquals(folder.toString(), model.fresh().folderProperty().get());
        model.fresh().begin();
        Survey survey = desk.survey().survey();
        assertEquals("Weir House, 2nd floor", survey.site().name());
        assertEquals("2026-10-05", survey.visit().date().orElseThrow().toString());
        assertEquals(2, survey.limits().neighbourSteps());
        assertEquals("", survey.limits().setBy());
        assertFalse(survey.setUps().get(0).declared());
        assertEquals(Place.SITE, desk.placeProperty().get());
        assertTrue(Files.exists(folder.resolve("survey.json")));
    }

    @Test
    void whyTheSurveyNamedAtTheStartCannotBeOpenedIsSaidHere() throws IOException {
        Path demo = Screens.demo(home);
        Files.writeString(demo.resolve("survey.json"), "{");
        desk.open(demo, desk::refuse);
        assertTrue(model.open().troubleProperty().get().startsWith("survey.json"), model.open().troubleProperty().get());
        SurveysModel anew = new SurveysModel(desk, home);
        assertEquals(model.open().troubleProperty().get(), anew.open().troubleProperty().get(), "the place may be made later");
    }

    @Test
    void aFolderThatSomebodyTypedIsKept() {
        model.fresh().folderProperty().set(home.resolve("own").toString());
        model.fresh().siteProperty().set("Weir House");
        assertEquals(home.resolve("own").toString(), model.fresh().folderProperty().get());
    }

    @Test
    void withoutANameOrAFolderNothingIsBegun() throws IOException {
        model.fresh().begin();
        assertTrue(model.fresh().troubleProperty().get().startsWith("Type the site's name"));
        model.fresh().siteProperty().set("x");
        model.fresh().folderProperty().set("\u0000");
        model.fresh().begin();
        assertTrue(model.fresh().troubleProperty().get().startsWith("This is no name"));
        model.fresh().folderProperty().set(Screens.demo(home).toString());
        model.fresh().begin();
        assertTrue(model.fresh().troubleProperty().get().contains("There is a survey in reading-rooms already"), model.fresh().troubleProperty().get());
        model.fresh().folderProperty().set(Files.writeString(home.resolve("file"), "").toString());
        model.fresh().begin();
        assertFalse(model.fresh().troubleProperty().get().isEmpty());
        assertNull(desk.survey());
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
            "'Weir House',            weir-house,        as usual",
            "'Häuser / Süd: 2',       häuser-süd-2,      what no folder may hold is left out",
            "'..\\..\\etc',           etc,               no way out",
            "'???',                   '',                nothing is left",
            "'CON',                   con,               stands behind a date and is no device there"})
    void foldersAreNamedAfterTheSite(String site, String name, String why) {
        assertEquals(name, FolderText.name(site), why);
    }

    @Test
    void theDemonstrationIsCopiedAnewEachTime() throws IOException {
        model.openDemonstration();
        Path first = desk.survey().folder();
        assertEquals(home.resolve("covewalk").resolve("demonstration"), first);
        assertEquals(Files.readString(Path.of("survey-demo/reading-rooms/readings.csv")), Files.readString(first.resolve("readings.csv")));
        model.openDemonstration();
        assertEquals(first.resolveSibling("demonstration-2"), desk.survey().folder());
    }

    @Test
    void aFolderIsOpenedHoweverItIsWritten() {
        Path demo = Screens.demo(home);
        for (String typed : List.of("\"" + demo + "\"", "~/reading-rooms", demo.resolve("survey.json").toString())) {
            desk.close();
            model.open().folderProperty().set(typed);
            model.open().open();
            assertEquals(demo, desk.survey().folder(), typed);
        }
        desk.go(Place.SURVEYS);
        model.open().open();
        assertEquals(Place.SITE, desk.placeProperty().get(), "the one that is open is just gone to");
    }

    @Test
    void allThatIsWrongWithAFolderIsListedWithFileAndLine() throws IOException {
        Path demo = Screens.demo(home);
        Path file = demo.resolve("survey.json");
        Files.writeString(file, Files.readString(file).replace("\"neighbourSteps\": 2.0", "\"neighbourSteps\": -2").replace("\"minutesOn\": 55", "\"minutesOn\": \"long\""));
        model.open().folderProperty().set(demo.toString());
        model.open().open();
        List<String> lines = model.open().troubleProperty().get().lines().toList();
        assertEquals(2, lines.size(), lines.toString());
        assertTrue(lines.get(0).startsWith("survey.json:4: visit.minutesOn: "), lines.get(0));
        assertTrue(lines.get(1).startsWith("survey.json:8: limits.neighbourSteps: -2 is not above 0"), lines.get(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "nowhere/at/all", "\u0000", "~", "."})
    void whatIsNoSurveyIsSaidAndOpensNothing(String typed) {
        model.open().folderProperty().set(typed);
        model.open().open();
        assertFalse(model.open().troubleProperty().get().isEmpty());
        assertNull(desk.survey());
    }

    @Test
    void eachKnownSurveySaysWhatItLacks() throws IOException {
        Path demo = Screens.demo(home);
        Path gone = home.resolve("pulled");
        desk = Desks.with(new Settings(Theme.DARK, 100, Locale.ENGLISH, false, false), List.of(demo, gone));
        model = new SurveysModel(desk, home);
        model.shown();
        assertTrue(known().get(0).matches("Quillbrook Reading Rooms.*: 2026-10-12 \u00b7 \\d+ places? unsettled \u00b7 \\d+ beyond the limit"), known().get(0));
        assertEquals("pulled: There is no such folder. Give the folder of a survey.", known().get(1));
        assertFalse(model.recent().surveys().get(1).there());
        model.recent().forget(gone);
        assertEquals(List.of(demo), desk.memoryProperty().get().recent());
        assertEquals(1, known().size());
    }

    @Test
    void theOpenSurveySaysWhatIsNotWalkedAsItChanges() {
        model.fresh().siteProperty().set("Weir House");
        model.fresh().begin();
        assertEquals(List.of("Weir House: 2026-10-05 \u00b7 no cove described"), known());
        Survey demo = Desks.withDemo(home).survey().survey();
        desk.survey().change(survey -> survey.withReels(demo.reels()).withCoves(demo.coves()));
        assertEquals(List.of("Weir House: 2026-10-05 \u00b7 5 coves not walked"), known());
    }
}
