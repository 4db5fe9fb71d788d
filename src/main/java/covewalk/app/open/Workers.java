package covewalk.app.open;

import java.util.concurrent.Executor;

/**
 * Who does what. In tests all three may be {@code Runnable::run}.
 *
 * @param disk reads and writes files, one task after the other
 * @param sums judges, one task after the other
 * @param screen runs what screens are told, on their thread
 */
public record Workers(Executor disk, Executor sums, Executor screen) {
}
