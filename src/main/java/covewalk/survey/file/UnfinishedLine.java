package covewalk.survey.file;

import static java.nio.charset.StandardCharsets.UTF_8;

import covewalk.survey.Problem;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The last line of a log when the power went while it was written. */
final class UnfinishedLine {

    private UnfinishedLine() {
    }

    /** Keeps it in {@code set-aside.csv}, before anybody takes it out of the log. */
    static Problem setAside(LogContent content, FolderLock lock) throws IOException {
        Problem problem = Problem.warning("log.set-aside").at(FileNames.LOG, content.lines() + 1, "");
        return setAside(problem, content.unfinished(), lock);
    }

    /** As {@link #setAside(LogContent, FolderLock)}, for what is recorded of the punch list. */
    static Problem setAside(PunchContent content, FolderLock lock) throws IOException {
        Problem problem = Problem.warning("punch.set-aside").at(FileNames.PUNCH, content.lines() + 1, "");
        return setAside(problem, content.unfinished(), lock);
    }

    private static Problem setAside(Problem problem, byte[] unfinished, FolderLock lock) throws IOException {
        String reason = Problem.warning("log.set-aside.reason").sentence(Locale.ROOT);
        SetAside.of(lock).add(List.of(new SetAsideRow(problem.file(), problem.line(), "", reason, text(unfinished))));
        return problem;
    }

    /** A power cut may leave zeros where letters should be; they are shown, so that the row stays one line. */
    private static String text(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        new String(bytes, UTF_8).chars().forEach(c -> {
            if (c < ' ') {
                text.append(String.format(Locale.ROOT, "\\x%02x", c));
            } else {
                text.append((char) c);
            }
        });
        return text.toString();
    }
}
