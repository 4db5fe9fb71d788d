package covewalk.survey.file.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Problem;
import covewalk.survey.Seen;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.SurveyText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody sees whose survey.json is wrong: one place of a sound description is replaced at a time. */
class DescriptionProblemsTest {

    @TempDir
    private Path folder;

    private ReadSurvey read(String description) throws IOException {
        return SurveyFolder.at(SurveyText.folder(folder, description, null)).read();
    }

    private ReadSurvey readWith(String there, String instead) throws IOException {
        assertTrue(SurveyText.SOUND.contains(there), () -> "the sound description has no " + there);
        return read(SurveyText.SOUND.replace(there, instead));
    }

    @Test
    void aSoundSurveyHasNoProblem() throws IOException {
        ReadSurvey read = read(SurveyText.SOUND);
        assertEquals("", Seen.all(read.problems()));
        assertEquals("Harbour House", read.survey().orElseThrow().site().name());
    }

    /** Placements may stand in any order, and are sorted when they are read. */
    @Test
    void aNeededFieldUnderAnotherNameIsNamedBesideTheOneThatIsMissing() throws IOException {
        String problems = Seen.all(read(SurveyText.SOUND.replace("\"placements\"", "\"placementz\"")).problems());
        assertTrue(problems.contains("placements: This is missing."), problems);
        assertTrue(problems.contains("If placements is meant, write it so."), problems);
    }

    @Test
    void aMisspeltFieldIsNamedByWhereItStandsInTheFile() throws IOException {
        String first = "        { \"reel\": \"R1\", \"fromM\": 0.0, \"toM\": 5.0, \"knownFrom\": \"seen\", \"installed\": \"2026-09\" }";
        String second = "        { \"reel\": \"R2\", \"fromM\": 5.0, \"toM\": 10.0, \"knownFrom\": \"seen\", \"installed\": \"2026-09\" }";
        String swapped = SurveyText.SOUND.replace(first, "HERE").replace(second, first).replace("HERE", second.replace("installed", "instaled"));
        assertEquals("W survey.json:18: coves[0].placements[0].instaled: Nothing is known here by the name instaled, so it counts for nothing."
                + " If installed is meant, write it so.", Seen.all(read(swapped).problems()));
    }

    @ParameterizedTest(name = "{index}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        # what stands in the sound description | what stands in its place | what is seen
        "covewalk-survey/1" | "covewalk-survey/2" | R survey.json:2: format: This file has the format covewalk-survey/2; this program reads covewalk-survey/1. Use a newer version of the program.
        "format": "covewalk-survey/1", | ~~ | R survey.json:1: format: This is missing. Fill it in.
        "format": "covewalk-survey/1" | "format": 1 | R survey.json:2: format: 1 is no text. Put it in quotation marks.
        "name": "Harbour House" | "name": 7 | R survey.json:3: site.name: 7 is no text. Put it in quotation marks.
        "2026-10-05" | "5.10.2026" | R survey.json:4: visit.date: 5.10.2026 is no date. Write it as 2026-10-05.
        "commissioning" | "walk" | R survey.json:4: visit.purpose: walk is not known here. Write one of: commissioning, complaint, warranty, revisit.
        "minutesOn": 45 | "minutesOn": 4.5 | R survey.json:4: visit.minutesOn: 4.5 is no whole number. Write it without decimals.
        "minutesOn": 45 | "minutesOn": -1 | R survey.json:4: visit.minutesOn: -1 is outside 0 to 10000000. Correct it.
        "minutesOn": 45 | "minutesOn": 29 | W survey.json:4: visit.minutesOn: The light had been on for 29 minutes only. LED light changes in its first 30 minutes: read again when it is warm, or say so in the report.
        "site": { "name": "Harbour House", "address": "" } | "site": "Harbour House" | R survey.json:3: site: Here belongs a group of fields in curly brackets. Put them in.
        "repeatabilityUv": 0.0003 | "repeatabilityUv": 0 | R survey.json:6: setups[0].repeatabilityUv: 0 is not above 0 and at most 0.1. Correct it.
        "repeatabilityUv": 0.0003 | "repeatabilityUv": "0.0003" | R survey.json:6: setups[0].repeatabilityUv: "0.0003" is no number. Write a number with a point, without quotation marks or unit.
        "reads": "strip" | "reads": "wall" | R survey.json:6: setups[0].reads: wall is not known here. Write one of: strip, wash, ceiling.
        "dimPercent": 100 | "dimPercent": 40 | W survey.json:6: setups[0].dimPercent: The light was dimmed to 40 %. Colour may change with dimming: read at full light, or compare only readings of this level.
        "dimPercent": 100 | "dimPercent": 101 | R survey.json:6: setups[0].dimPercent: 101 is not above 0 and at most 100. Correct it.
        "2027-03-01" | "2026-10-04" | W survey.json:6: setups[0].calibrationDue: The calibration was due on 2026-10-04, before the visit on 2026-10-05. Have the meter calibrated; until then verdicts against a target are weak.
        "errorRate": 0.05 | "errorrate": 0.05 | W survey.json:8: limits.errorrate: Nothing is known here by the name errorrate, so it counts for nothing. If errorRate is meant, write it so.
        "minutesOn": 45 | "minuteOn": 45 | W survey.json:4: visit.minuteOn: Nothing is known here by the name minuteOn, so it counts for nothing. If minutesOn is meant, write it so.
        "errorRate": 0.05 | "errorRate": 0.05, "errorrate": 0.01, "clauseOfOurs": "4" | ~~
        "bin": "7D", "lot": "L-204" | "bin": "7D", "lot": "L-204", "shelf": "x", "gtim": "4" | W survey.json:10: reels[0].gtim: Nothing is known here by the name gtim, so it counts for nothing. If gtin is meant, write it so.
        "closed": false | "closd": false | W survey.json:14: coves[0].closd: Nothing is known here by the name closd, so it counts for nothing. If closed is meant, write it so.
        "neighbourSteps": 2.0, | ~~ | R survey.json:8: limits.neighbourSteps: This is missing. Fill it in.
        "neighbourSteps": 2.0 | "neighbourSteps": 1e999 | R survey.json:8: limits.neighbourSteps: 1E+999 is not above 0 and at most 100. Correct it.
        "errorRate": 0.05 | "errorRate": 0.5 | R survey.json:8: limits.errorRate: 0.5 is not between 0 and 0.5. Correct it.
        "stepRule": "uv-circle" | "stepRule": "round" | R survey.json:8: limits.stepRule: round is not known here. Write one of: uv-circle, ellipse.
        "errorPer": "joint" | "errorPer": "reel" | R survey.json:8: limits.errorPer: reel is not known here. Write one of: joint, survey.
        "setBy": "specification, 2.3" | "setBy": "" | W survey.json:8: limits.setBy: No clause sets this limit, so it is printed as chosen by the inspector. Name the clause if there is one.
        "id": "R2", | ~~ | R survey.json:11: reels[1].id: This is missing. Fill it in.
        "id": "R2" | "id": "R1" | R survey.json:11: reels[1].id: The id R1 is taken by reels[0]. Give this one another id.
        "id": "R2" | "id": " " | R survey.json:11: reels[1].id: This is empty. Fill it in.
        "serial": "1002" | "serial": "1001" | W survey.json:11: reels[1].serial: The serial 1001 is also that of reel R1. Look at both labels again.
        "bin": "7D", "lot": "L-204" | "bin": 7, "lot": "L-204" | R survey.json:10: reels[0].bin: 7 is no text. Put it in quotation marks.
        "claimedCentre": null },  | "claimedCentre": { "cct": 2700 } }, | R survey.json:10: reels[0].claimedCentre.duv: This is missing. Fill it in.
        "claimedCentre": null },  | "claimedCentre": { "cct": 2700, "x": 0.45 } }, | R survey.json:10: reels[0].claimedCentre.x: This colour is given twice, by cct and duv and by x and y. Keep one of the two.
        "target": { "cct": 2700, "duv": 0.0 } | "target": { "cct": 27, "duv": 0.0 } | R survey.json:15: coves[0].target.cct: 27.0 K is outside 1000 to 20000 K; a white is some 1800 to 8000 K. Look at the meter again.
        "target": { "cct": 2700, "duv": 0.0 } | "target": { "x": 0.3, "y": 0.6 } | R survey.json:15: coves[0].target.x: This colour is too far from white to have a CCT: its Duv is beyond 0.05. Look at the meter again.
        "target": { "cct": 2700, "duv": 0.0 }, | ~~ | W survey.json:8: limits.targetSteps: No cove has a target, so nothing is judged against targetSteps. Give a cove its target, or take targetSteps out.
        "lengthM": 10.0, | ~~ | R survey.json:14: coves[0].lengthM: This is missing. Fill it in.
        "lengthM": 10.0, | "lengthM": 10.4, | W survey.json:19: coves[0].placements[1].toM: Nothing is placed from 10 m to 10.4 m. Add the reel that lies there; if it is dark there, leave it so.
        "lengthM": 10.0, | "lengthM": 9.9, | R survey.json:19: coves[0].placements[1].toM: The placement ends at 10 m, and the cove is 9.9 m long. Correct one of them.
        "closed": false | "closed": "no" | R survey.json:14: coves[0].closed: "no" is neither true nor false. Write one of them, without quotation marks.
        "atM": 0.0 | "atM": 11 | W survey.json:16: coves[0].feeds[0].atM: A feed at 11 m lies outside the cove, which is 10 m long. Look at the position again.
        "reel": "R2", | "reel": "R3", | R survey.json:19: coves[0].placements[1].reel: There is no reel R3. Add the reel, or correct its name.
        "fromM": 5.0 | "fromM": 4 | W survey.json:11: reels[1].lengthM: 6 m of this reel are placed, and its label says 5 m. Look whether a placement belongs to another reel.
        "fromM": 5.0 | "fromM": 4.95 | R survey.json:19: coves[0].placements[1].fromM: This placement begins at 4.95 m, where another still lies up to 5 m. Correct one of them.
        "fromM": 5.0 | "fromM": 5.31 | W survey.json:19: coves[0].placements[1].fromM: Nothing is placed from 5 m to 5.31 m. Add the reel that lies there; if it is dark there, leave it so.
        "fromM": 5.0 | "fromM": 5.3 | ~~
        "fromM": 5.0, "toM": 10.0 | "fromM": 10.0, "toM": 5.0 | R survey.json:19: coves[0].placements[1].toM: The end at 5.0 m is not beyond the start at 10.0 m. Correct one of them.
        "knownFrom": "seen", "installed": "2026-09" } | "knownFrom": "heard" } | R survey.json:18: coves[0].placements[0].knownFrom: heard is not known here. Write one of: seen, as-built, assumed.
        "lengthM": 5.0, "claimedSteps": 3.0, "claimedCentre": null } | "lengthM": 5.0, "claimedSteps": 25, "claimedCentre": null } | W survey.json:10: reels[0].claimedSteps: A claim of 25 steps is unusually wide. Look at the data sheet again.
        "claim": null | "claim": [] | R survey.json:22: claim: Here belongs a group of fields in curly brackets. Put them in.
        "claim": null | "claim": null, "claim": null | R survey.json:22: claim: This field stands here twice. Take one of them out.
        "claim": null | "claim": NaN | R survey.json:22: From here on it cannot be read: a comma, a bracket or a quotation mark is missing or one too many, or something is no number. Correct this line or the one above it.
        "claim": null | "claim" null | R survey.json:22: From here on it cannot be read: a comma, a bracket or a quotation mark is missing or one too many, or something is no number. Correct this line or the one above it.
        """)
    void saysWhatIsWrong(String there, String instead, String seen) throws IOException {
        ReadSurvey read = readWith(there, instead);
        assertEquals(seen, read.problems().stream().limit(1).map(first -> Seen.all(List.of(first)))
                .findFirst().orElse(""));
        assertEquals(seen.startsWith("R") || instead.equals("\"fromM\": 4"), read.refused());
    }

    @Test
    void tellsEverythingAtOnceInTheOrderOfTheFile() throws IOException {
        ReadSurvey read = read(SurveyText.SOUND.replace("\"minutesOn\": 45", "\"minutesOn\": \"long\"")
                .replace("\"lengthM\": 10.0,", "").replace("\"neighbourSteps\": 2.0", "\"neighbourSteps\": 0"));
        assertEquals("""
                R survey.json:4: visit.minutesOn: "long" is no number. Write a number with a point, without quotation marks or unit.
                R survey.json:8: limits.neighbourSteps: 0 is not above 0 and at most 100. Correct it.
                R survey.json:14: coves[0].lengthM: This is missing. Fill it in.""", Seen.all(read.problems()));
    }

    @Test
    void whatIsDarkAtBothEndsOfAClosedCoveIsOneGap() throws IOException {
        ReadSurvey read = read(SurveyText.SOUND.replace("\"closed\": false", "\"closed\": true")
                .replace("\"fromM\": 0.0", "\"fromM\": 0.2").replace("\"toM\": 10.0", "\"toM\": 9.8"));
        assertEquals("W survey.json:17: coves[0].placements: Where the cove closes, 0.4 m have no reel. Add the reel that lies"
                + " there; if it is dark there, leave it so.", Seen.all(read.problems()));
    }

    @Test
    void aCoveWithoutReelsIsAWarning() throws IOException {
        ReadSurvey read = read("""
                { "format": "covewalk-survey/1", "limits": { "neighbourSteps": 2, "setBy": "2.3" },
                  "coves": [ { "id": "C1", "lengthM": 3, "placements": [] } ] }""");
        assertEquals("W survey.json:2: coves[0].placements: No reel is placed in cove C1, so it has no joints to judge."
                + " Add its placements.", Seen.all(read.problems()));
    }

    @Test
    void placementsOutOfOrderAreSortedAndKeepTheirLines() throws IOException {
        ReadSurvey read = readWith("{ \"reel\": \"R1\", \"fromM\": 0.0, \"toM\": 5.0", "{ \"reel\": \"R9\", \"fromM\": 10.0, \"toM\": 11.0");
        assertEquals("""
                R survey.json:18: coves[0].placements[0].reel: There is no reel R9. Add the reel, or correct its name.
                R survey.json:18: coves[0].placements[0].toM: The placement ends at 11 m, and the cove is 10 m long. Correct one of them.
                W survey.json:19: coves[0].placements[1].fromM: Nothing is placed from 0 m to 5 m. Add the reel that lies there; if it is dark there, leave it so.""",
                Seen.all(read.problems()));
    }

    @ParameterizedTest(name = "{index}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        # the whole file | what is seen
        ~~ | R survey.json: The file is empty. Restore it from a copy.
        [] | R survey.json:1: The file has to begin with a curly bracket and end with one. Restore it from a copy.
        {  | R survey.json:1: The file ends too early: a bracket or a quotation mark is still open. Close it, or restore the file from a copy.
        {} {} | R survey.json:1: There is text after the closing bracket. Take it out.
        {} | R survey.json:1: format: This is missing. Fill it in.
        """)
    void refusesWhatIsNoDescription(String text, String seen) throws IOException {
        assertEquals(seen, Seen.all(read(text).problems()));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"depth", "text", "number"})
    void refusesWhatIsTooMuch(String what) throws IOException {
        String json = switch (what) {
            case "depth" -> "[".repeat(60);
            case "text" -> "{\"a\": \"" + "x".repeat(100_001) + "\"}";
            default -> "{\"a\": " + "1".repeat(200) + "}";
        };
        assertEquals("R survey.json:1: The file is too large: over 64 MB, nested too deeply, or a text or number in it is"
                + " too long. Take out what does not belong there.", Seen.all(read(json).problems()));
    }

    @Test
    void aMissingFolderOrDescriptionIsAProblemAndNoException() throws IOException {
        assertEquals("R nowhere: There is no such folder. Give the folder of a survey.",
                Seen.all(SurveyFolder.at(folder.resolve("nowhere")).read().problems()));
        assertEquals("R survey.json: The survey has no description. Give the folder of a survey, or describe it first.",
                Seen.all(SurveyFolder.at(folder).read().problems()));
    }

    @Test
    void anUnsoundSurveyIsStillThereToBePutRight() throws IOException {
        ReadSurvey read = readWith("\"reel\": \"R2\",", "\"reel\": \"R3\",");
        assertTrue(read.refused() && read.survey().isPresent());
        assertEquals(0, read.warnings().stream().filter(Problem::refused).count());
    }

    @Test
    void whatIsNotGivenIsAssumedAndSaidSo() throws IOException {
        ReadSurvey read = read("""
                { "format": "covewalk-survey/1", "limits": { "neighbourSteps": 2 }, "reels": [],
                  "setups": [ { "id": "B", "repeatabilityUv": 0.0004 } ] }""");
        var setUp = read.survey().orElseThrow().firstSetUp();
        assertEquals("[absoluteUv, unlikeUv]", setUp.assumed().toString());
        assertEquals(0.0004, setUp.repeatabilityUv());
        assertEquals(0.05, read.survey().orElseThrow().limits().errorRate());
        Files.writeString(folder.resolve("survey.json"),
                "{ \"format\": \"covewalk-survey/1\", \"limits\": { \"neighbourSteps\": 2 } }");
        assertEquals("[absoluteUv, repeatabilityUv, unlikeUv]",
                SurveyFolder.at(folder).read().survey().orElseThrow().firstSetUp().assumed().toString());
    }
}
