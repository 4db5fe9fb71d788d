package covewalk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A survey of one cove with three reels of 4 m, invented. The second reel's colour is given in steps from the first's;
 * the third is like the second.
 */
final class SmallSurvey {

    static final String HEADER = "reading,cove,position_m,role,setup,round,cct_k,duv,x,y,u_prime,v_prime,lux,taken_at,replaces,note\n";

    private static final String DESCRIPTION = """
            { "format": "covewalk-survey/1",
              "site": { "name": "Test hall (invented)" },
              "setups": [ { "id": "A", "meter": "M", "repeatabilityUv": 0.0003, "absoluteUv": 0.0015, "unlikeUv": 0.0005,
                            "smearM": 0.05 } ],
              "limits": { "neighbourSteps": 2.0, "setBy": "clause 1" },
              "reels": [ { "id": "R1", "maker": "Acorn", "product": "T27", "lot": "L1" },
                         { "id": "R2", "maker": "Acorn", "product": "T27", "lot": "L2" },
                         { "id": "R3", "maker": "Acorn", "product": "T27", "lot": "L2" } ],
              "coves": [ { "id": "C1", "place": "east wall", "lengthM": 12.0, "placements": [
                { "reel": "R1", "fromM": 0.0, "toM": 4.0 },
                { "reel": "R2", "fromM": 4.0, "toM": 8.0 },
                { "reel": "R3", "fromM": 8.0, "toM": 12.0 } ] } ] }
            """;

    private SmallSurvey() {
    }

    /** Makes it in a folder, each reel read at eight stations. */
    static Path in(Path folder, double steps) throws IOException {
        return in(folder, steps, 12.0);
    }

    /** The same, walked only up to {@code lastM}. */
    static Path in(Path folder, double steps, double lastM) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("survey.json"), DESCRIPTION);
        StringBuilder log = new StringBuilder(HEADER);
        for (int i = 0; i < 24; i++) {
            double positionM = 0.25 + 0.5 * i;
            double u = 0.26 + (positionM > 4 ? steps * 0.0011 : 0) + (i % 2 == 0 ? 0.0001 : -0.0001);
            if (positionM <= lastM) {
                log.append(String.format(Locale.ROOT, "%d,C1,%.2f,,,,,,,,%.5f,0.53000,,,,%n", i + 1, positionM, u));
            }
        }
        Files.writeString(folder.resolve("readings.csv"), log.toString().replace("\r", ""));
        return folder;
    }

    /** The names of all files below the folder, in order. */
    static List<String> files(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted().toList();
        }
    }
}
