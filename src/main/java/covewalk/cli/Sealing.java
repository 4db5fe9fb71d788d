package covewalk.cli;

import covewalk.survey.Problem;
import covewalk.survey.file.FolderLock;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.Seal;
import java.io.IOException;
import java.util.Locale;

/** Seals a survey for a report, or says that the report is not sealed, and why. */
final class Sealing {

    private final Terminal terminal;

    Sealing(Terminal terminal) {
        this.terminal = terminal;
    }

    /** The code to print beside a signature; empty where the survey could not be sealed. */
    String seal(FolderLock lock) {
        try {
            Outcome<String> seal = Seal.issue(lock);
            if (seal.refused()) {
                seal.problems().stream().map(Sealing::words).forEach(terminal.err()::println);
                terminal.err().println(Sentences.of("report.seal-unreadable"));
            }
            return seal.value().orElse("");
        } catch (IOException failed) {
            terminal.err().println(Sentences.of("report.not-sealed", FailureWords.reason(failed)));
            return "";
        }
    }

    private static String words(Problem problem) {
        return problem.inFull(Locale.ROOT);
    }
}
