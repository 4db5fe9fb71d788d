package covewalk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A survey of two reels alike, walked with a meter that drifts by four steps in 100 minutes, invented. The second reel is
 * read an hour after the first, so that the drift is taken for a step between them; a reference spot shows what it is.
 */
public final class DriftingSurvey {

    private static final String DESCRIPTION = """
            { "format": "covewalk-survey/1",
              "site": { "name": "Test hall (invented)" },
              "setups": [ { "id": "A", "meter": "M", "repeatabilityUv": 0.0003, "absoluteUv": 0.0015, "unlikeUv": 0.0005 } ],
              "limits": { "neighbourSteps": 2.0, "setBy": "clause 1" },
              "reels": [ { "id": "R1", "maker": "Acorn", "product": "T27" }, { "id": "R2", "maker": "Acorn", "product": "T27" } ],
              "coves": [ { "id": "C1", "lengthM": 8.0, "placements": [
                { "reel": "R1", "fromM": 0.0, "toM": 4.0 }, { "reel": "R2", "fromM": 4.0, "toM": 8.0 } ] } ] }
            """;

    /** To and fro along each reel: walked straight on, a drift in time would look like one along the reel. */
    private static final int[] FIRST = {2, 4, 0, 5, 1, 3};
    private static final int[] SECOND = {3, 5, 1, 6, 0, 4, 2};

    private final StringBuilder log =
            new StringBuilder("reading,cove,position_m,role,setup,round,cct_k,duv,x,y,u_prime,v_prime,lux,taken_at,replaces,note\n");
    private int rows;

    private DriftingSurvey() {
    }

    public static Path in(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("survey.json"), DESCRIPTION);
        Files.writeString(folder.resolve("readings.csv"), new DriftingSurvey().walked());
        return folder;
    }

    private String walked() {
        for (int minute = 0; minute <= 100; minute += 4) {
            if (minute % 20 == 0) {
                row(minute, 0.5, "reference");
                row(minute, 0.5, "reference");
            }
            if (minute < 24) {
                row(minute, 0.5 + FIRST[minute / 4] / 2.0, "walk");
            } else if (minute > 72) {
                row(minute, 4.5 + SECOND[(minute - 76) / 4] / 2.0, "walk");
            }
        }
        return log.toString();
    }

    private void row(int minute, double atM, String role) {
        rows++;
        double u = 0.26 + 4 * 0.0011 * minute / 100 + (rows % 2 == 0 ? 0.0001 : -0.0001);
        log.append(String.format(Locale.ROOT, "%d,C1,%.2f,%s,,,,,,,%.5f,0.53000,,2026-10-12T%02d:%02d,,\n", rows, atM, role, u,
                18 + minute / 60, minute % 60));
    }
}
