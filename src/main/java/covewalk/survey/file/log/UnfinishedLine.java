package covewalk.survey.file.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.FolderLock;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The last line of a log when the power went while it was written. */
public final class UnfinishedLine {

    private UnfinishedLine() {
    }

    /**
     * Keeps it in {@code set-aside.csv}, before anybody takes it out of the log.
     *
     * @param told which log, in which line, for whoever typed it
     */
    public static Problem setAside(Problem told, byte[] unfinished, FolderLock lock) throws IOException {
        String reason = Problem.warning("log.set-aside.reason").sentence(Locale.ROOT);
        SetAside.of(lock).add(List.of(new SetAsideRow(told.file(), told.line(), "", reason, text(unfinished))));
        return told;
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
