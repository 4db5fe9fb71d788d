package covewalk.app.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.desk.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckSealsTest {

    private static final String OWN = "The seals lie in the survey's own folder; only the code on paper shows whether they were replaced too.";

    @TempDir
    Path folder;
    private Desk desk;
    private CheckSeals model;
    private String code;

    @BeforeEach
    void aSealedSurvey() {
        desk = DemoDesk.open(folder);
        ReportModel report = new ReportModel(desk);
        report.write();
        code = report.issuedProperty().get().seal();
        model = new CheckSeals(desk);
    }

    private Path file(String name) {
        return desk.survey().folder().resolve(name);
    }

    @Test
    void saysNothingBeforeItIsAsked() {
        assertEquals(List.of(), model.answer());
    }

    @Test
    void comparesWithTheOwnSealsAndSaysWhatTheyCannotShow() {
        model.check();
        assertEquals(List.of("Unchanged since seal " + code + ".", OWN), model.answer());
    }

    @Test
    void comparesWithTheCodeOnPaperHoweverItIsTyped() {
        model.codeProperty().set(" " + code.toLowerCase(java.util.Locale.ROOT).replace("-", " ") + " ");
        model.check();
        assertEquals(List.of("Unchanged since seal " + code + "."), model.answer());
    }

    @Test
    void countsWhatWasAdded() {
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        model.codeProperty().set(code);
        model.check();
        assertEquals(List.of("Only added to since seal " + code + ": all that was sealed is as it was.", "readings.csv: rows added: 1"),
                model.answer());
    }

    @Test
    void namesTheFileThatWasChanged() throws IOException {
        Files.writeString(file("survey.json"), Files.readString(file("survey.json")) + " ");
        model.check();
        assertEquals(List.of("Changed since seal " + code + ": this is not what was sealed.", "survey.json: changed", OWN), model.answer());
    }

    @Test
    void whatIsNoCodeIsSaid() {
        model.codeProperty().set("7F3K");
        model.check();
        assertTrue(model.answer().get(0).startsWith("7F3K is no code of a seal"), model.answer().toString());
    }

    @Test
    void aSurveyThatWasNeverSealedIsToldAsSuch() throws IOException {
        Files.delete(file("seal.json"));
        model.check();
        assertEquals(List.of("This survey was never sealed. Its report seals it."), model.answer());
    }

    @Test
    void theAnswerGoesOnceItMayNotHoldAnyMore() {
        model.check();
        DemoDesk.read(desk, "C1", 4.4, "0.4577", "0.4110");
        assertEquals(List.of(), model.answer());
        model.check();
        model.codeProperty().set(code);
        assertEquals(List.of(), model.answer());
    }
}
