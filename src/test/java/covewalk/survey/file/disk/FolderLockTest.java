package covewalk.survey.file.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Seen;
import covewalk.survey.file.SurveyText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderLockTest {

    @TempDir
    private Path folder;

    /** Another program: takes the lock, says so, and waits to be killed; or says why it cannot. */
    static final class OtherProgram {
        private OtherProgram() {
        }

        public static void main(String[] args) throws IOException {
            Outcome<FolderLock> lock = FolderLock.take(Path.of(args[0]), new Holder("Covewalk", "ben", "office-pc", "2026-10-05 18:00"));
            System.out.println(lock.refused() ? Seen.all(lock.problems()) : "held");
            System.out.flush();
            if (!lock.refused()) {
                System.in.read();
            }
        }
    }

    private Process start() throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return new ProcessBuilder(java.toString(), "-cp", System.getProperty("java.class.path"),
                "-Dstdout.encoding=UTF-8", OtherProgram.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static void kill(Process program) throws InterruptedException {
        program.destroyForcibly();
        assertTrue(program.waitFor(30, TimeUnit.SECONDS));
    }

    @Test
    void aSecondProgramIsToldWhoWritesAndADeadOneBlocksNobody() throws IOException, InterruptedException {
        Process other = start();
        try {
            assertEquals("held", other.inputReader().readLine());
            assertEquals("R Somebody else writes in this survey: Covewalk, run by ben on office-pc since 2026-10-05 18:00."
                    + " Close the survey there, then open it here.", Seen.all(FolderLock.take(folder, SurveyText.holder()).problems()));
        } finally {
            kill(other);
        }
        assertTrue(Files.exists(folder.resolve("lock-holder")), "the killed program had no time to tidy up");
        FolderLock.take(folder, SurveyText.holder()).value().orElseThrow().close();
    }

    @Test
    void aSecondOpeningInOneProgramIsRefusedAndTheFirstStillHolds() throws IOException, InterruptedException {
        try (FolderLock first = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            String held = "R Somebody else writes in this survey: Covewalk, run by anna on site-laptop since 2026-10-05 18:30."
                    + " Close the survey there, then open it here.";
            assertEquals(held, Seen.all(FolderLock.take(folder, SurveyText.holder()).problems()));
            Process other = start();
            assertEquals(held, other.inputReader().readLine(), "the lock was lost by asking for it again");
            kill(other);
            assertTrue(first.isHeld());
        }
        FolderLock.take(folder, SurveyText.holder()).value().orElseThrow().close();
    }

    @Test
    void aCopyOfAFolderMadeWhileItIsOpenCanBeOpened(@TempDir Path copy) throws IOException {
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            Files.copy(folder.resolve("lock-holder"), copy.resolve("lock-holder"));
            FolderLock.take(copy, SurveyText.holder()).value().orElseThrow().close();
            assertTrue(lock.isHeld());
        }
    }

    @Test
    void closingTwiceDoesNoHarmAndLeavesNoHolder() throws IOException {
        FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow();
        lock.close();
        lock.close();
        assertFalse(lock.isHeld());
        assertFalse(Files.exists(folder.resolve("lock-holder")));
    }

    @Test
    void aHolderFileFullOfMischiefIsShownOnOneShortLine() throws IOException, InterruptedException {
        Process other = start();
        try {
            assertEquals("held", other.inputReader().readLine());
            Files.writeString(folder.resolve("lock-holder"), "somebody\t" + "x".repeat(1000) + "\nprocess 1\n");
            String seen = Seen.all(FolderLock.take(folder, SurveyText.holder()).problems());
            assertTrue(seen.length() < 350 && seen.startsWith("R Somebody else writes in this survey: somebody xxx"), seen);
        } finally {
            kill(other);
        }
    }

    @Test
    void aFolderThatIsNotThereIsToldInWords() {
        assertEquals("R There is no such folder. Give the folder of a survey.",
                Seen.all(FolderLock.take(folder.resolve("nowhere"), SurveyText.holder()).problems()));
    }

    @Test
    void theHolderIsWhoeverIsLoggedIn() {
        Holder here = Holder.here("Covewalk", SurveyText.clock());
        assertEquals("2026-10-05 18:30", here.since());
        assertFalse(here.host().isBlank());
    }
}
