package covewalk.app.surveys;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The demonstration survey, which comes with the program; what is opened is a copy, so that it can be written in. */
final class Demonstration {

    private static final List<String> FILES = List.of("survey.json", "readings.csv", "punch.csv");
    private static final String WITHIN = "/covewalk/demo/";
    private static final String NAME = "demonstration";

    private final Path surveys;

    /** @param surveys the folder in which it is to lie */
    Demonstration(Path surveys) {
        this.surveys = surveys;
    }

    /**
     * A fresh copy, in a folder of its own: those made before may have been written in.
     *
     * @return its folder
     */
    Path copy() throws IOException {
        Path folder = free();
        Files.createDirectories(folder);
        for (String file : FILES) {
            try (InputStream in = Demonstration.class.getResourceAsStream(WITHIN + file)) {
                Files.copy(in, folder.resolve(file));
            }
        }
        return folder;
    }

    private Path free() {
        Path folder = surveys.resolve(NAME);
        for (int number = 2; Files.exists(folder); number++) {
            folder = surveys.resolve(NAME + "-" + number);
        }
        return folder;
    }
}
