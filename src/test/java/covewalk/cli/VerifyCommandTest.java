package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerifyCommandTest {

    private static final String OWN_SEALS =
            "The seals lie in the survey's own folder; only the code on paper shows whether they were replaced too. Give it with --against CODE.\n";

    @TempDir
    Path folder;
    private Path survey;
    private String code;

    @BeforeEach
    void aSealedSurvey() throws IOException {
        survey = SmallSurvey.in(folder.resolve("hall"), 5);
        for (String file : List.of("photos/reels/R1.jpg", "originals/walk.csv")) {
            Files.createDirectories(survey.resolve(file).getParent());
            Files.writeString(survey.resolve(file), "x\n");
        }
        code = report();
    }

    private String report() {
        String out = FrontDoor.run("report", survey.toString(), "--out", folder.resolve("out").toString()).out();
        return out.lines().filter(line -> line.startsWith("Sealed: ")).findFirst().orElseThrow().substring(8);
    }

    private Run verify(String... options) {
        List<String> line = new ArrayList<>(List.of("verify", survey.toString()));
        line.addAll(List.of(options));
        return FrontDoor.run(line.toArray(String[]::new));
    }

    private void append(String file, String text) throws IOException {
        Files.writeString(survey.resolve(file), text, StandardOpenOption.APPEND, StandardOpenOption.CREATE);
    }

    private void assertSays(int exit, String lines) {
        Run own = verify();
        assertEquals(lines + OWN_SEALS, own.out(), own.err());
        assertEquals(exit, own.code());
        Run against = verify("--against", code);
        assertEquals(lines, against.out(), against.err());
        assertEquals(exit, against.code());
    }

    @Test
    void whatIsAsItWasIsUnchanged() {
        assertSays(0, "Unchanged since seal " + code + ".\n");
    }

    @Test
    void readingsAndRecordsThatWereAddedAreCounted() throws IOException {
        append("readings.csv", "25,C1,1.5,,,,,,,,0.26000,0.53000,,,,\n26,C1,1.6,,,,,,,,0.26000,0.53000,,,,\n");
        FrontDoor.run("punch", survey.toString(), "--item", "1", "--done", "2026-11-30");
        append("photos/C1.jpg", "y");
        assertSays(3, "Only added to since seal " + code + ": all that was sealed is as it was.\n"
                + "  punch.csv: rows added: 1\n  readings.csv: rows added: 2\n  photos/C1.jpg: added\n");
    }

    @Test
    void rowsSetAsideAreCountedWithoutTheirHeader() throws IOException {
        append("set-aside.csv", "source,line,column,reason,row\nwalk.csv,3,,no number,x\n");
        assertSays(3, "Only added to since seal " + code + ": all that was sealed is as it was.\n  set-aside.csv: rows added: 1\n");
    }

    @Test
    void anUnfinishedLastLineIsNoChange() throws IOException {
        append("readings.csv", "25,C1,1.5");
        assertSays(0, "Unchanged since seal " + code + ".\n");
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"readings.csv, changed", "punch.csv, changed", "survey.json, changed", "photos/reels/R1.jpg, changed",
        "originals/walk.csv, changed", "readings.csv, missing", "punch.csv, missing", "survey.json, missing",
        "photos/reels/R1.jpg, missing", "originals/walk.csv, missing"})
    void aFileThatIsNotAsItWasIsNamed(String file, String how) throws IOException {
        if (how.equals("missing")) {
            Files.delete(survey.resolve(file));
        } else {
            byte[] bytes = Files.readAllBytes(survey.resolve(file));
            bytes[0] ^= 1;
            Files.write(survey.resolve(file), bytes);
        }
        assertSays(1, "Changed since seal " + code + ": this is not what was sealed.\n  " + file + ": " + how + "\n");
    }

    @Test
    void aLogCutShortIsChanged() throws IOException {
        List<String> rows = Files.readAllLines(survey.resolve("readings.csv"));
        Files.writeString(survey.resolve("readings.csv"), String.join("\n", rows.subList(0, rows.size() - 1)) + "\n");
        assertSays(1, "Changed since seal " + code + ": this is not what was sealed.\n  readings.csv: changed\n");
    }

    @Test
    void aDescriptionCorrectedAndSealedAgainIsToldOfTheEarlierSeal() throws IOException {
        Files.writeString(survey.resolve("survey.json"), Files.readString(survey.resolve("survey.json")).replace("east wall", "west wall"));
        String second = report();
        Run run = verify();
        assertEquals("Unchanged since seal " + second + ".\nEarlier seal " + code + ": corrected since, and sealed again after that.\n"
                + "  survey.json: changed\n" + OWN_SEALS, run.out());
        assertEquals(0, run.code());
        assertEquals(1, verify("--against", code).code());
    }

    @Test
    void aLogRewrittenAndSealedAgainIsFoundByTheEarlierSeal() throws IOException {
        Files.writeString(survey.resolve("readings.csv"), Files.readString(survey.resolve("readings.csv")).replace("0.53000", "0.52000"));
        report();
        Run run = verify();
        assertTrue(run.out().contains("Earlier seal " + code + ": a log that is only ever added to was changed after it.\n  readings.csv: changed\n"),
                run.out());
        assertEquals(1, run.code());
    }

    @Test
    void aCodeIsForgivenWhatPaperDoesToIt() {
        String typed = code.toLowerCase(Locale.ROOT).replace("-", " ").replace('0', 'o').replace('1', 'l');
        assertNotEquals(code, typed);
        for (String asTyped : List.of(typed, code.replace("-", ""), " " + code.replace('-', '\u2013') + " ", code.replace('1', 'I'))) {
            assertEquals("Unchanged since seal " + code + ".\n", verify("--against", asTyped).out(), asTyped);
        }
    }

    @Test
    void anotherCodeIsUnknown() {
        String other = (code.charAt(0) == 'X' ? 'Y' : 'X') + code.substring(1);
        Run run = verify("--against", other);
        assertEquals("No report of this survey was sealed with the code " + other + ". Compare it with the paper letter by letter; where it is"
                + " right, this is another folder than the report was made from, or its files and seals were changed.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void theCodeAloneIsEnoughWhereNothingChanged() throws IOException {
        Files.delete(survey.resolve("seal.json"));
        assertEquals(0, verify("--against", code).code());
        assertEquals("This survey was never sealed. Its report seals it.\n", verify().err());
        append("readings.csv", "25,C1,1.5,,,,,,,,0.26000,0.53000,,,,\n");
        assertEquals(2, verify("--against", code).code());
    }

    @Test
    void sealsThatCannotBeReadAreToldWithTheirPlace() throws IOException {
        Files.writeString(survey.resolve("seal.json"), Files.readString(survey.resolve("seal.json")).replace("\"length\": 2", "\"length\": 3"));
        Run run = verify();
        assertTrue(run.err().startsWith("seal.json:5: seals[0].code: The files listed here do not have the code"), run.err());
        assertEquals(2, run.code());
    }

    @Test
    void sealsThatAreNoSealsAreToldAsTheFileTheyAre() throws IOException {
        Path seals = survey.resolve("seal.json");
        Files.writeString(seals, "");
        assertEquals("seal.json: The file is empty. Restore it from a copy.\n", verify().err());
        Files.writeString(seals, "[]");
        assertEquals("seal.json:1: The file has to begin with a curly bracket and end with one. Restore it from a copy.\n", verify().err());
        Files.delete(seals);
        Files.createDirectory(seals);
        Run run = verify();
        assertEquals("seal.json: This is a folder, and a file of this name belongs here. Put the file back in its place.\n", run.err());
        assertEquals(2, run.code());
    }

    /** A seal made by somebody else may name any file; the files outside the survey are not opened. */
    @Test
    void aForgedSealOpensNoOtherFile() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "s\n");
        Path forged = SmallSurvey.in(folder.resolve("forged"), 5);
        Files.createDirectories(forged.resolve("photos"));
        Files.writeString(forged.resolve("photos/secret.txt"), "s\n");
        FrontDoor.run("report", forged.toString(), "--out", folder.resolve("out").toString());
        String seal = Files.readString(forged.resolve("seal.json"));
        Files.writeString(forged.resolve("seal.json"), seal.replace("photos/secret.txt", "../secret.txt"));
        assertEquals(2, FrontDoor.run("verify", forged.toString()).code(), "its code does not fit");
        assertTrue(Files.exists(secret));
    }

    @Test
    void theSameInJson() throws IOException {
        append("readings.csv", "25,C1,1.5,,,,,,,,0.26000,0.53000,,,,\n");
        assertEquals("{\n  \"code\" : \"" + code + "\",\n  \"result\" : \"added\",\n  \"files\" : [ {\n    \"file\" : \"readings.csv\",\n"
                + "    \"change\" : \"rows-added\",\n    \"rowsAdded\" : 1\n  } ],\n  \"earlierSeals\" : [ ]\n}\n", verify("--json").out());
        assertEquals(3, verify("--json").code());
    }

    @Test
    void nothingIsWritten() throws IOException {
        List<String> before = SmallSurvey.files(survey);
        verify();
        verify("--against", code);
        assertEquals(before, SmallSurvey.files(survey));
    }
}
