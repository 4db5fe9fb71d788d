package covewalk.app.walk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A survey that nobody has walked yet: two coves, the first with two reels of 5 m, the second without any. */
final class NewSurvey {

    private NewSurvey() {
    }

    static Path in(Path folder) {
        return withReelsOf(5, folder);
    }

    /** The same with two pieces of 0.6 m, which a few readings settle. */
    static Path shortIn(Path folder) {
        return withReelsOf(0.6, folder);
    }

    private static Path withReelsOf(double lengthM, Path folder) {
        return write(folder, """
                [ { "id": "C1", "place": "", "lengthM": %2$s, "datum": "west end, by the door", "heightM": 3.2,
                    "placements": [ { "reel": "R1", "fromM": 0, "toM": %1$s }, { "reel": "R2", "fromM": %1$s, "toM": %2$s } ] },
                  { "id": "C2", "place": "", "lengthM": 2, "placements": [] } ]""".formatted(lengthM, 2 * lengthM));
    }

    /** With a second set-up, of a coarser meter. */
    static Path withACoarseMeterToo(Path folder) {
        try {
            Path survey = in(folder);
            Path description = survey.resolve("survey.json");
            Files.writeString(description, Files.readString(description).replace("\"smearM\": 0.05 }", "\"smearM\": 0.05 },"
                    + " { \"id\": \"B\", \"meter\": \"coarse\", \"repeatabilityUv\": 0.0009, \"absoluteUv\": 0.0015, \"unlikeUv\": 0.0005,"
                    + " \"reads\": \"strip\", \"smearM\": 0.05 }"));
            return survey;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Path withoutCoves(Path folder) {
        return write(folder, "[]");
    }

    private static Path write(Path folder, String coves) {
        try {
            Path survey = Files.createDirectories(folder.resolve("new"));
            Files.writeString(survey.resolve("survey.json"), """
                    { "format": "covewalk-survey/1", "site": { "name": "Mill Lane Library (invented)" },
                      "setups": [ { "id": "A", "meter": "any", "repeatabilityUv": 0.0003, "absoluteUv": 0.0015, "unlikeUv": 0.0005,
                                    "reads": "strip", "smearM": 0.05 } ],
                      "limits": { "neighbourSteps": 2.0 },
                      "reels": [ { "id": "R1", "maker": "M", "product": "P", "nominalCct": 2700 },
                                 { "id": "R2", "maker": "M", "product": "P", "nominalCct": 2700 } ],
                      "coves": %s }
                    """.formatted(coves));
            return survey;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
