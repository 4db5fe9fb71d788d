package covewalk.demo;

import java.util.List;
import java.util.Locale;

/**
 * A part of the walk (a row of {@code walk.csv}): stations of one cove that were read one after the other.
 *
 * @param wrong added to the true colour where a reading went wrong
 */
record Leg(Kind kind, String cove, List<Stop> stops, Offset wrong, String note) {

    /** How it went. */
    enum Kind {
        /** As it should. */
        WALK,
        /** At the reference spot. */
        REFERENCE,
        /** With the cove off. */
        DARK,
        /** The meter was held badly and nobody noticed. */
        MISREAD,
        /** The meter was held badly; the inspector noticed, and took the reading back. */
        WITHDRAWN,
        /** Typed wrongly, then corrected. */
        MISTYPED
    }

    /** One station: its position as typed, and how many readings there. */
    record Stop(String positionM, int readings) {

        static Stop of(String word) {
            String[] parts = word.split("x");
            return new Stop(parts[0], parts.length == 1 ? 1 : Integer.parseInt(parts[1]));
        }
    }

    static List<Leg> all() {
        return Table.read("walk.csv", Leg::of);
    }

    private static Leg of(Table.Row row) {
        return new Leg(Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)), row.text("cove"),
                row.words("stations").stream().map(Stop::of).toList(),
                new Offset(row.number("along"), row.number("across")), row.text("note"));
    }
}
