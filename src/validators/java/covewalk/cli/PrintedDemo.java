package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The demonstration, printed in each language: punch list, page for the specifier, dossier of a reel. */
final class PrintedDemo {

    private PrintedDemo() {
    }

    /** Every page that was written, those whose names end like this; the survey it is made from is a copy. */
    static List<Path> pages(Path folder, String ending) throws IOException {
        Path copy = Files.createDirectories(folder.resolve("survey"));
        for (String file : List.of("survey.json", "readings.csv", "punch.csv")) {
            Files.copy(Path.of("survey-demo", "reading-rooms", file), copy.resolve(file));
        }
        List<Path> pages = new ArrayList<>();
        for (String language : List.of("en", "de")) {
            Path out = folder.resolve(language);
            print(copy, out, language, "a4", "--for", "specifier");
            print(copy, out, language, "letter", "--for", "warranty", "--reel", "R11");
            try (Stream<Path> files = Files.list(out)) {
                pages.addAll(files.filter(file -> file.toString().endsWith(ending)).sorted().toList());
            }
        }
        assertEquals(6, pages.size(), pages.toString());
        return pages;
    }

    private static void print(Path survey, Path out, String language, String paper, String... reader) {
        List<String> words = new ArrayList<>(List.of("report", survey.toString(), "--out", out.toString(), "--language", language,
                "--paper", paper));
        words.addAll(List.of(reader));
        FrontDoor.Run run = FrontDoor.run(words.toArray(String[]::new));
        assertEquals(1, run.code(), run.err());
    }
}
