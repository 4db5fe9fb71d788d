package covewalk.report;

import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * For whom a report is: everybody gets the punch list, and one reader may get a page beside it.
 *
 * @param reel that the warranty dossier is about; empty for all other readers
 */
public record Readership(Reader reader, Optional<Reel> reel) {

    /** Who reads it. */
    public enum Reader {
        EVERYBODY,
        /** Who settles a dispute: each joint that is beyond or unsettled on a sheet of its own. */
        SPECIFIER,
        /** Who decides on a claim about one reel. */
        WARRANTY;

        /** The word in texts and on the command line. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Readership {
        if (reel.isPresent() != (reader == Reader.WARRANTY)) {
            throw new IllegalArgumentException("a reel is named for the warranty dossier, and for no other reader");
        }
    }

    /** The punch list alone. */
    public static Readership everybody() {
        return new Readership(Reader.EVERYBODY, Optional.empty());
    }

    /** How many pages and lists they get, each in its files: the punch list is one. */
    public int parts() {
        return reader == Reader.EVERYBODY ? 1 : 2;
    }

    /**
     * The reels that a name stands for: by id first, else by serial.
     *
     * @return none where there is no such reel; more than one where several have the serial
     */
    public static List<Reel> reelsNamed(String name, Survey survey) {
        return survey.reel(name).map(List::of).orElseGet(() -> name.isBlank() ? List.of()
                : survey.reels().stream().filter(reel -> reel.serial().equals(name)).toList());
    }
}
