package covewalk.report;

import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

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
     * The reels that a name stands for: by id first, else by serial, else by either where capitals do not count.
     *
     * @return none where there is no such reel; more than one where several have the serial, or differ by capitals alone
     */
    public static List<Reel> reelsNamed(String given, Survey survey) {
        String name = given.strip(); // as pasted, or as a scanner ends it
        if (name.isEmpty()) {
            return List.of();
        }
        return Stream.<Predicate<Reel>>of(reel -> reel.id().equals(name), reel -> reel.serial().equals(name),
                reel -> reel.id().equalsIgnoreCase(name) || reel.serial().equalsIgnoreCase(name))
                .map(fits -> survey.reels().stream().filter(fits).toList()).filter(reels -> !reels.isEmpty()).findFirst().orElse(List.of());
    }
}
