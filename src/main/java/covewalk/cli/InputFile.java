package covewalk.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/** Tells before a file is opened why it cannot be read; systems word that in many ways. */
final class InputFile {

    private InputFile() {
    }

    static void check(Path file) throws CannotBeDone {
        if (Files.isDirectory(file)) {
            throw refused("file.is-folder", file);
        }
        if (Files.notExists(file)) {
            throw refused("file.missing", file);
        }
        if (!Files.isReadable(file)) {
            throw refused("file.denied", file);
        }
    }

    private static CannotBeDone refused(String why, Path file) {
        return CannotBeDone.because(Sentences.of(why, String.valueOf(file.getFileName())));
    }
}
