package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reading;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;

/** A process killed while readings are typed: every reading that it had said to be kept is in the log. */
class KilledWalkTest {

    /** More readings than this before the kill would only take longer. */
    private static final int MOST = 60;

    @TempDir
    Path folder;

    @RepeatedTest(10)
    void noReadingThatWasKeptIsLost(RepetitionInfo run) throws IOException, InterruptedException {
        killOnce(run.getCurrentRepetition());
    }

    @Tag("long")
    @RepeatedTest(190)
    void norInManyMoreRuns(RepetitionInfo run) throws IOException, InterruptedException {
        killOnce(1000 + run.getCurrentRepetition());
    }

    private void killOnce(int seed) throws IOException, InterruptedException {
        Path survey = NewSurvey.in(folder);
        Random random = new Random(seed);
        Process child = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-Xshare:auto", "-cp", System.getProperty("java.class.path"), TypingChild.class.getName(), survey.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        List<String> kept = new ArrayList<>();
        try (BufferedReader out = child.inputReader(StandardCharsets.UTF_8)) {
            int before = 1 + random.nextInt(MOST);
            for (String line = out.readLine(); line != null && kept.size() < before; line = out.readLine()) {
                kept.add(line);
            }
            Thread.sleep(0, random.nextInt(1_000_000));
            child.toHandle().destroyForcibly(); // leaves open what it had said until then
            out.lines().forEach(kept::add);
        } finally {
            child.destroyForcibly().waitFor();
        }
        assertTrue(kept.size() > 0, "the child process kept nothing");
        ReadSurvey read = SurveyFolder.at(survey).read();
        assertTrue(read.problems().stream().noneMatch(problem -> problem.refused()), read.problems().toString());
        Set<String> lost = new HashSet<>(kept);
        read.log().stream().map(Reading::id).forEach(lost::remove);
        assertEquals(Set.of(), lost);
        TestWalk again = TestWalk.in(survey);
        assertEquals(List.of(), again.desk().survey().troubleProperty().get());
        again.close();
    }
}
