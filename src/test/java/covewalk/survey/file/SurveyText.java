package covewalk.survey.file;

import static java.nio.charset.StandardCharsets.UTF_8;

import covewalk.survey.file.disk.Holder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** Invented surveys for tests, as text. */
public final class SurveyText {

    public static final String HEADER =
            "reading,cove,position_m,role,setup,round,cct_k,duv,x,y,u_prime,v_prime,lux,taken_at,replaces,note";

    /** Sound in everything: nothing is refused and nothing looks wrong. Each thing stands on a line of its own. */
    public static final String SOUND = """
            {
              "format": "covewalk-survey/1",
              "site": { "name": "Harbour House", "address": "" },
              "visit": { "date": "2026-10-05", "inspector": "A. Moreno", "purpose": "commissioning", "minutesOn": 45, "follows": "" },
              "setups": [
                { "id": "A", "meter": "hand meter", "serial": "77", "calibrationDue": "2027-03-01", "repeatabilityUv": 0.0003, "absoluteUv": 0.0015, "unlikeUv": 0.0005, "reads": "strip", "smearM": 0.05, "dimPercent": 100 }
              ],
              "limits": { "neighbourSteps": 2.0, "targetSteps": 3.0, "setBy": "specification, 2.3", "stepRule": "uv-circle", "errorRate": 0.05, "errorPer": "joint" },
              "reels": [
                { "id": "R1", "maker": "Lumen Weavers", "product": "LW-27", "nominalCct": 2700, "bin": "7D", "lot": "L-204", "serial": "1001", "made": "2026-07", "lengthM": 5.0, "claimedSteps": 3.0, "claimedCentre": null },
                { "id": "R2", "maker": "Lumen Weavers", "product": "LW-27", "nominalCct": 2700, "bin": "7D", "lot": "L-205", "serial": "1002", "made": "2026-07", "lengthM": 5.0, "claimedSteps": 3.0, "claimedCentre": null }
              ],
              "coves": [
                { "id": "C1", "place": "lobby", "lengthM": 10.0, "closed": false, "datum": "north end", "heightM": 3.2, "surface": "",
                  "target": { "cct": 2700, "duv": 0.0 },
                  "feeds": [ { "atM": 0.0, "driver": "D1", "circuit": "7" } ],
                  "placements": [
                    { "reel": "R1", "fromM": 0.0, "toM": 5.0, "knownFrom": "seen", "installed": "2026-09" },
                    { "reel": "R2", "fromM": 5.0, "toM": 10.0, "knownFrom": "seen", "installed": "2026-09" }
                  ] }
              ],
              "claim": null
            }
            """;

    private SurveyText() {
    }

    /** A folder with a description and a log; no log where {@code log} is null. */
    public static Path folder(Path folder, String description, String log) throws IOException {
        Files.writeString(folder.resolve("survey.json"), description, UTF_8);
        if (log != null) {
            Files.writeString(folder.resolve("readings.csv"), log, UTF_8);
        }
        return folder;
    }

    public static Holder holder() {
        return new Holder("Covewalk", "anna", "site-laptop", "2026-10-05 18:30");
    }

    public static Clock clock() {
        return Clock.fixed(Instant.parse("2026-10-05T18:30:00Z"), ZoneOffset.UTC);
    }
}
