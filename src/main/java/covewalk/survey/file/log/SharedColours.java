package covewalk.survey.file.log;

import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.util.Optional;

/**
 * Gives readings of equal digits the same colour: a meter of four decimals shows some ten thousand whites. The table
 * forgets what another colour pushes out.
 */
final class SharedColours {

    private static final int SLOTS = 1 << 16;

    /** The numbers are compared as objects: they are shared already, and what is not shared is only made again. */
    private record Known(Typed cctK, Typed duv, Typed x, Typed y, Typed u, Typed v, Optional<TypedColour> colour) {
        boolean isOf(Typed[] six) {
            return cctK == six[0] && duv == six[1] && x == six[2] && y == six[3] && u == six[4] && v == six[5];
        }
    }

    private final Known[] slots = new Known[SLOTS];

    /** @param six CCT, Duv, x, y, u', v', by pairs, both numbers null of one that is missing; one pair at least is there */
    Optional<TypedColour> of(Typed[] six) {
        int slot = slot(six);
        Known known = slots[slot];
        if (known == null || !known.isOf(six)) {
            Optional<TypedColour> colour = Optional.of(new TypedColour(pair(six, 0), pair(six, 2), pair(six, 4)));
            known = new Known(six[0], six[1], six[2], six[3], six[4], six[5], colour);
            slots[slot] = known;
        }
        return known.colour;
    }

    private static Optional<TypedPair> pair(Typed[] six, int first) {
        return six[first] == null ? Optional.empty() : Optional.of(new TypedPair(six[first], six[first + 1]));
    }

    private static int slot(Typed[] six) {
        long hash = 0;
        for (Typed number : six) {
            hash = 0x9E3779B97F4A7C15L * (hash ^ (number == null ? 0 : Double.doubleToLongBits(number.value())));
            hash ^= hash >>> 32; // the low bits of 0.4578 and 0.4568 hold as much as the high ones
        }
        return (int) hash & SLOTS - 1;
    }
}
