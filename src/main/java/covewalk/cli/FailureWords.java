package covewalk.cli;

import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.disk.NotKept;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Says why a command stopped. A fault of the program is told as one; its trace goes to the system's log only. */
final class FailureWords implements IExecutionExceptionHandler {

    private final Terminal terminal;

    FailureWords(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public int handleExecutionException(Exception failed, CommandLine command, ParseResult asked) {
        if (terminal.outputFailed()) {
            return ExitCode.DONE; // whether that matters is for the end of the run to say
        }
        linesFor(failed).forEach(terminal.err()::println);
        return ExitCode.NOT_DONE;
    }

    /** The sentences for a failure. */
    static List<String> linesFor(Exception failed) {
        if (failed instanceof CannotBeDone told) {
            return told.lines();
        }
        if (failed instanceof NotKept lost) {
            return List.of(lost.problem().inFull(Locale.ROOT));
        }
        if (failed instanceof IOException disk) {
            return List.of(sentence(disk));
        }
        if (failed instanceof UncheckedIOException disk) {
            return List.of(sentence(disk.getCause()));
        }
        System.getLogger("covewalk").log(System.Logger.Level.DEBUG, "stopped", failed);
        return List.of(Sentences.of("fault-of-the-program", String.valueOf(failed.getMessage())));
    }

    private static String sentence(IOException failed) {
        if (failed instanceof FileSystemException file && file.getFile() != null) {
            return Sentences.of("disk.file", String.valueOf(Path.of(file.getFile()).getFileName()), DiskWords.reason(failed, Locale.ROOT));
        }
        return Sentences.of("disk", DiskWords.reason(failed, Locale.ROOT));
    }
}
