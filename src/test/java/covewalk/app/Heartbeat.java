package covewalk.app;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;

/**
 * Asks the screen's thread again and again for a sign of life. Keeps the longest wait for it, and the most that the
 * thread worked between two: that does not count what other programs take of the machine.
 */
final class Heartbeat implements AutoCloseable {

    private static final long PAUSE_MS = 2;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final AtomicLong longestNs = new AtomicLong();
    private final AtomicLong mostWorkNs = new AtomicLong();
    private final AtomicBoolean beating = new AtomicBoolean(true);
    private final Thread thread = new Thread(this::beat, "heartbeat");
    private long workedNs;

    Heartbeat() {
        thread.setDaemon(true);
        thread.start();
    }

    private void beat() {
        AtomicBoolean answered = new AtomicBoolean(true);
        while (beating.get()) {
            if (answered.compareAndSet(true, false)) {
                long asked = System.nanoTime();
                Platform.runLater(() -> {
                    answer(asked);
                    answered.set(true);
                });
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException stopped) {
                return;
            }
        }
    }

    private void answer(long asked) {
        longestNs.accumulateAndGet(System.nanoTime() - asked, Math::max);
        long worked = threads.getCurrentThreadCpuTime();
        mostWorkNs.accumulateAndGet(worked - workedNs, Math::max);
        workedNs = worked;
    }

    /** The longest wait since this was asked last, ms. */
    double longestMs() {
        return longestNs.getAndSet(0) / 1e6;
    }

    /** The most work at one go since this was asked last, ms. */
    double mostWorkMs() {
        return mostWorkNs.getAndSet(0) / 1e6;
    }

    @Override
    public void close() {
        beating.set(false);
        thread.interrupt();
    }
}
