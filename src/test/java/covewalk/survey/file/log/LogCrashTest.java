package covewalk.survey.file.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reading;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.SurveyText;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed while it writes: everything it called kept is there, and the log can be added to. */
class LogCrashTest {

    private static final int CALLED_KEPT = 50;

    /** Keeps readings until it is killed, and calls out each id when it is kept. */
    static final class Walker {
        private Walker() {
        }

        public static void main(String[] args) throws IOException {
            try (ReadingLog log = ReadingLog.open(Path.of(args[0]), SurveyText.holder(), "A").value().orElseThrow()) {
                while (true) {
                    String id = log.nextId();
                    log.append(Readings.reading(id, "0.5", ""));
                    System.out.println(id);
                }
            }
        }
    }

    @Test
    void whatWasCalledKeptIsThereAfterTheProgramWasKilled(@TempDir Path folder) throws IOException, InterruptedException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
        List<String> called = walkAndKill(folder);
        try (ReadingLog log = ReadingLog.open(folder, SurveyText.holder(), "A").value().orElseThrow()) {
            log.append(Readings.reading(log.nextId(), "0.5", "after the crash"));
        }
        ReadSurvey read = SurveyFolder.at(folder).read();
        List<String> there = read.log().stream().map(Reading::id).toList();
        assertEquals(List.of(), read.problems());
        assertTrue(called.size() >= CALLED_KEPT && there.containsAll(called), () -> called + " was called kept, there is " + there);
        assertEquals("after the crash", read.log().get(there.size() - 1).note());
    }

    private static List<String> walkAndKill(Path folder) throws IOException, InterruptedException {
        Process walker = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Walker.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        List<String> called = new ArrayList<>();
        try (BufferedReader out = walker.inputReader()) {
            for (String id = out.readLine(); id != null; id = out.readLine()) {
                called.add(id);
                if (called.size() == CALLED_KEPT) {
                    walker.toHandle().destroyForcibly(); // the process itself would close what it said
                }
            }
        } finally {
            walker.destroyForcibly();
            assertTrue(walker.waitFor(30, TimeUnit.SECONDS));
        }
        return called;
    }
}
