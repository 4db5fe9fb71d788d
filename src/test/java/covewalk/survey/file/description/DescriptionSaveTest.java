package covewalk.survey.file.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Limits;
import covewalk.survey.Seen;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.SurveyText;
import covewalk.survey.file.disk.FolderLock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DescriptionSaveTest {

    @TempDir
    private Path folder;

    private Survey survey() throws IOException {
        return SurveyFolder.at(folder).read().survey().orElseThrow();
    }

    private String save(Survey survey) throws IOException {
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            assertEquals(List.of(), SurveyFolder.at(folder).save(survey, lock));
        }
        return Files.readString(folder.resolve("survey.json"));
    }

    /** It may be sealed as it is. */
    @Test
    void savingWhatWasReadLeavesTheFileByteForByte() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        assertEquals(SurveyText.SOUND, save(survey()));
    }

    @Test
    void aChangeIsLaidOutOnceAndTakenBackLeavesOnlyTheLayout() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        Survey before = survey();
        save(before.with(before.limits().withNeighbourSteps(3)));
        String back = save(before);
        assertEquals(before, survey());
        assertEquals(back, save(before));
        assertEquals(squeezed(SurveyText.SOUND), squeezed(back));
        assertTrue(back.startsWith("{\n  \"format\": \"covewalk-survey/1\",\n  \"site\": {\n    \"name\": \"Harbour House\",\n"), back);
    }

    private static String squeezed(String json) {
        return json.replaceAll("\\s+", "");
    }

    @Test
    void fieldsNobodyHereKnowsSurviveAndStandBehindTheKnownOnes() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND.replace("{ \"id\": \"R2\",", "{ \"shelf\": [1.50, null], \"id\": \"R2\",")
                .replace("\"claim\": null", "\"weather\": { \"rain\": true }")
                .replace("{ \"reel\": \"R2\",", "{ \"seenBy\": \"A. M.\", \"reel\": \"R2\",")
                .replace("{ \"atM\": 0.0,", "{ \"breaker\": \"B16\", \"atM\": 0.0,"), null);
        Survey survey = survey();
        Survey turned = new Survey(survey.site(), survey.visit(), survey.setUps(), survey.limits(),
                List.of(survey.reels().get(1), survey.reels().get(0)), survey.coves(), survey.claim());
        String json = squeezed(save(turned));
        assertTrue(json.contains("\"claimedSteps\":3.0,\"claimedCentre\":null,\"shelf\":[1.50,null]},{\"id\":\"R1\""), json);
        assertTrue(json.endsWith("],\"weather\":{\"rain\":true}}"), json);
        assertTrue(json.contains("\"installed\":\"2026-09\",\"seenBy\":\"A.M.\""), json);
        assertTrue(json.contains("\"circuit\":\"7\",\"breaker\":\"B16\""), json);
    }

    @Test
    void whatIsAssumedOfAMeterIsNotWrittenAsIfDeclared() throws IOException {
        SurveyText.folder(folder, "{ \"format\": \"covewalk-survey/1\", \"limits\": { \"neighbourSteps\": 2 } }", null);
        String json = save(survey());
        assertFalse(json.contains("repeatabilityUv"), json);
        assertEquals(SetUp.ASSUMED, survey().firstSetUp());
    }

    @Test
    void numbersThatChangedAreWrittenPlainly() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        Limits limits = survey().limits();
        String json = save(survey().with(new Limits(1.5, limits.targetSteps(), "clause 4 — noted \"by hand\"",
                limits.stepRule(), 0.00025, limits.errorPer())));
        assertTrue(json.contains("\"neighbourSteps\": 1.5,\n    \"targetSteps\": 3.0,"), json);
        assertTrue(json.contains("\"errorRate\": 0.00025,"), json);
        assertTrue(json.contains("\"setBy\": \"clause 4 — noted \\\"by hand\\\"\","), json);
    }

    @Test
    void aFileThatCannotBeReadIsNotWrittenOver() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        Survey survey = survey();
        Files.writeString(folder.resolve("survey.json"), "{ \"format\": ");
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            assertEquals("R survey.json:1: The file ends too early: a bracket or a quotation mark is still open."
                    + " Close it, or restore the file from a copy.", Seen.all(SurveyFolder.at(folder).save(survey, lock)));
        }
        assertEquals("{ \"format\": ", Files.readString(folder.resolve("survey.json")));
    }

    @Test
    void savingLeavesNothingBesideTheFile() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        save(survey());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of("lock", "survey.json"), files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void savingNeedsTheLockOfTheFolder(@TempDir Path other) throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        Survey survey = survey();
        FolderLock lock = FolderLock.take(other, SurveyText.holder()).value().orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> SurveyFolder.at(folder).save(survey, lock));
        lock.close();
        assertThrows(IllegalArgumentException.class, () -> SurveyFolder.at(other).save(survey, lock));
    }
}
