package covewalk.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Tells a person who looks on that long work goes on: nothing in the first second, then one line that counts. */
final class Progress {

    private final String doing;
    private final Terminal terminal;
    private int seconds;

    Progress(String doing, Terminal terminal) {
        this.doing = doing;
        this.terminal = terminal;
    }

    /** Does the work, and counts the seconds where somebody watches. */
    static <T> T during(String doing, Terminal terminal, Callable<T> work) throws Exception {
        if (!terminal.watched()) {
            return work.call();
        }
        Progress progress = new Progress(doing, terminal);
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(Progress::inBackground);
        clock.scheduleAtFixedRate(progress::second, 1, 1, TimeUnit.SECONDS);
        try {
            return work.call();
        } finally {
            clock.shutdownNow();
            clock.awaitTermination(1, TimeUnit.SECONDS);
            progress.end();
        }
    }

    private static Thread inBackground(Runnable counting) {
        Thread thread = new Thread(counting, "progress");
        thread.setDaemon(true);
        return thread;
    }

    /** Another second has passed. */
    void second() {
        terminal.err().print("\r" + Sentences.of("progress", doing, Integer.toString(++seconds)));
        terminal.err().flush();
    }

    /** Wipes the line, if there is one. */
    void end() {
        if (seconds > 0) {
            terminal.err().print("\r" + " ".repeat(Sentences.of("progress", doing, Integer.toString(seconds)).length()) + "\r");
            terminal.err().flush();
        }
    }
}
