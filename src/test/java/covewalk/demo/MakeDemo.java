package covewalk.demo;

import covewalk.survey.file.Seal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the demonstration survey's readings anew and seals it once. Its {@code survey.json} is written by hand. */
final class MakeDemo {

    /** The survey's folder, from the project's top. */
    static final Path FOLDER = Path.of("survey-demo", "reading-rooms");

    static final Path LOG = FOLDER.resolve("readings.csv");

    static final Path SEALS = FOLDER.resolve("seal.json");

    /** The date of the walk. Another one gives other noise, and perhaps another verdict at the limit. */
    static final long SEED = 20261012;

    private MakeDemo() {
    }

    public static void main(String[] args) throws IOException {
        Files.writeString(LOG, log(SEED));
        Files.deleteIfExists(SEALS);
        Seal.issue(FOLDER).value().orElseThrow();
    }

    static String log(long seed) {
        return new EveningWalk(seed).log(Leg.all());
    }
}
