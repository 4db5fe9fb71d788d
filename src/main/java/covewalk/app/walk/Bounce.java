package covewalk.app.walk;

import java.util.function.LongSupplier;

/** Tells a key that bounced under a glove from one that was meant: a question is not answered before it can be read. */
final class Bounce {

    /** Faster than this nobody answers (common practice, no source). */
    static final long MILLIS = 300;

    private final LongSupplier millis;
    private long last = Long.MIN_VALUE / 2;

    /** @param millis a clock that never goes back */
    Bounce(LongSupplier millis) {
        this.millis = millis;
    }

    /** Whether the key was struck just before; from now on this stroke is the last. */
    boolean again() {
        long now = millis.getAsLong();
        boolean soon = now - last < MILLIS;
        last = now;
        return soon;
    }
}
