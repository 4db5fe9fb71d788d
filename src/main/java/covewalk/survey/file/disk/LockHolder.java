package covewalk.survey.file.disk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the file {@code lock-holder} says: a line for people and a line that tells this process from all others, also
 * from one that had the same number before a restart.
 */
record LockHolder(String words, String process) {

    private static final int LONGEST = 200;

    static Optional<LockHolder> in(Path folder) {
        try {
            String text = new String(Files.readAllBytes(folder.resolve(FileNames.LOCK_HOLDER)), UTF_8);
            List<String> lines = text.lines().map(LockHolder::oneLine).toList();
            boolean named = !lines.isEmpty() && !lines.get(0).isBlank();
            return named ? Optional.of(new LockHolder(lines.get(0), String.join("\n", lines.subList(1, lines.size()))))
                    : Optional.empty();
        } catch (IOException nobodySays) {
            return Optional.empty();
        }
    }

    static void write(Path folder, Holder holder) throws IOException {
        String text = oneLine(holder.inWords()) + "\n" + thisProcess(folder) + "\n";
        Files.writeString(folder.resolve(FileNames.LOCK_HOLDER), text, UTF_8);
    }

    boolean isThisProcessIn(Path folder) throws IOException {
        return process.equals(thisProcess(folder));
    }

    /** The folder belongs to it, since a folder is sometimes copied together with this file. */
    private static String thisProcess(Path folder) throws IOException {
        ProcessHandle self = ProcessHandle.current();
        return "process " + self.pid() + self.info().startInstant().map(start -> " started " + start).orElse("")
                + " in " + Integer.toHexString(folder.toRealPath().hashCode());
    }

    private static String oneLine(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", " ").strip();
        return plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
    }
}
