package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {

    @TempDir
    Path folder;

    @Test
    void plansASurveyThatNobodyHasWalkedYet() throws IOException {
        SmallSurvey.in(folder, 0);
        Files.writeString(folder.resolve("readings.csv"), SmallSurvey.HEADER);
        List<String> before = SmallSurvey.files(folder);
        Run run = FrontDoor.run("plan", folder.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("General reminders. Your site rules, local codes and a licensed electrician come first.\n"
                + "Plan to settle, in nine cases of ten, neighbours that differ by 3 steps or more as beyond the\n"
                + "  limit of 2, and such as differ by no more than 1 as within it.\n"), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), run.out());
        assertTrue(run.lastLine().matches("Readings: \\d+ in all\\."), run.lastLine());
        assertEquals(before, SmallSurvey.files(folder), "it only reads");
    }

    @Test
    void asJsonItHoldsTheStopsInTheOrderOfReading() throws IOException {
        SmallSurvey.in(folder, 0);
        Files.writeString(folder.resolve("readings.csv"), SmallSurvey.HEADER);
        JsonNode plan = new ObjectMapper().readTree(FrontDoor.run("plan", "--json", folder.toString()).out());
        JsonNode stops = plan.at("/coves/0/stops");
        assertEquals("dark", stops.at("/0/role").asText());
        assertEquals("reference", stops.at("/1/role").asText());
        assertEquals(plan.get("readings").asInt(), stops.findValues("readings").stream().mapToInt(JsonNode::asInt).sum());
    }

    @Test
    void plansForTheSetUpThatIsAskedFor() throws IOException {
        SmallSurvey.in(folder, 0);
        Files.writeString(folder.resolve("readings.csv"), SmallSurvey.HEADER);
        Path description = folder.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"smearM\": 0.05 }", "\"smearM\": 0.05 },"
                + " { \"id\": \"B\", \"meter\": \"Coarse one\", \"repeatabilityUv\": 0.0009, \"absoluteUv\": 0.0015, \"unlikeUv\": 0,"
                + " \"smearM\": 0.3 }"));
        Run first = FrontDoor.run("plan", folder.toString());
        Run other = FrontDoor.run("plan", "--setup", "B", folder.toString());
        assertTrue(first.out().contains("For set-up A, M."), first.out());
        assertTrue(other.out().contains("For set-up B, Coarse one."), other.out());
        assertTrue(readings(other) > readings(first), "three times the noise takes more readings");
        JsonNode stops = new ObjectMapper().readTree(FrontDoor.run("plan", "--setup", "B", "--json", folder.toString()).out())
                .at("/coves/0/stops");
        stops.forEach(stop -> assertTrue(Math.abs(stop.get("positionM").asDouble() - 4) >= 0.6 || stop.get("role").asText().equals("reference"),
                "twice the smear of 0.3 m is kept clear of the joint: " + stop));

        assertEquals(other.out(), FrontDoor.run("plan", "--setup", " b", folder.toString()).out());

        Run none = FrontDoor.run("plan", "--setup", "C", folder.toString());
        assertEquals(2, none.code());
        assertTrue(none.err().contains("--setup: there is no set-up \"C\" in this survey. There are: A, B."), none.err());
    }

    private static int readings(Run run) {
        return Integer.parseInt(run.lastLine().replaceAll("\\D", ""));
    }

    @Test
    void whereNothingIsToBeReadItSaysWhichOfTheReasonsItIs() throws IOException {
        SmallSurvey.in(folder, 5);
        assertTrue(FrontDoor.run("plan", folder.toString()).out().contains("\n  Nothing to read: no joint is open.\n"));
        Files.writeString(folder.resolve("readings.csv"), SmallSurvey.HEADER);
        Path description = folder.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replaceAll("\"placements\": *\\[[^]]*]", "\"placements\": []"));
        assertTrue(FrontDoor.run("plan", folder.toString()).out().contains("\n  Nothing to read: no reel is placed in this cove.\n"));
    }

    @Test
    void whatCannotBeReadCannotBePlanned() {
        Run run = FrontDoor.run("plan", folder.resolve("nowhere").toString());
        assertEquals(2, run.code());
        assertEquals("nowhere: There is no such folder. Give the folder of a survey.\n", run.err());
    }
}
