package covewalk.verdict.plan;

import java.util.Locale;

/**
 * One stop of a walk.
 *
 * @param positionM where, m from the datum
 * @param reel the reel that lies there
 * @param readings how often to read, lifting the meter in between
 */
public record Stop(Kind kind, double positionM, String reel, int readings) {

    /** What is read at a stop. */
    public enum Kind {
        /** The cove off: what other light there is. */
        DARK,
        /** The spot read again and again, which shows the light or the meter drift. */
        REFERENCE,
        /** A station of the walk. */
        WALK;

        /** The word in files. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
