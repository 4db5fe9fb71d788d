package covewalk.app.forms;

import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.survey.label.Doubt;
import covewalk.survey.label.LabelCode;
import covewalk.survey.label.Scanned;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Which reel somebody means who typed something, or scanned a label, where a reel is asked for. */
public final class ReelFinder {

    /** What is written on masking tape is a name; what is longer came from a scanner and is kept as the serial. */
    private static final int LONGEST_NAME = 16;
    private static final int OFFERED = 6;

    private final Survey survey;
    private final int year;

    /** @param year this one: dates on labels have two digits of theirs */
    public ReelFinder(Survey survey, int year) {
        this.survey = survey;
        this.year = year;
    }

    /**
     * A reel, known or new.
     *
     * @param isNew whether the survey does not have it yet
     * @param doubts what is odd about the code that it was scanned from
     */
    public record Found(Reel reel, boolean isNew, Set<Doubt> doubts) {
    }

    /** The one that is meant; a text that no reel of the survey has makes a new one. An empty text means one more reel. */
    public Found find(String typed) {
        Scanned scanned = Scanned.of(typed);
        Optional<LabelCode> code = scanned.code();
        Set<Doubt> doubts = code.map(label -> label.doubts(year)).orElse(Set.of());
        Optional<Reel> known = code.isPresent() ? withCode(code.get()) : withText(scanned.text());
        return known.map(reel -> new Found(reel, false, doubts)).orElseGet(() -> new Found(fresh(scanned), true, doubts));
    }

    /** A reel of the survey that the text or code names, and no new one. */
    public Optional<Reel> known(String typed) {
        Scanned scanned = Scanned.of(typed);
        return scanned.code().isPresent() ? withCode(scanned.code().get()) : withText(scanned.text());
    }

    private Optional<Reel> withCode(LabelCode code) {
        List<Reel> same = survey.reels().stream().filter(reel -> agrees(reel, code)).toList();
        boolean named = code.serial().isPresent() || same.size() == 1 && code.lot().isPresent() && code.serial().isEmpty();
        return named ? same.stream().findFirst() : Optional.empty();
    }

    /** The same serial, or without one the same lot; and no other GTIN. */
    private static boolean agrees(Reel reel, LabelCode code) {
        boolean product = reel.gtin().isEmpty() || code.gtin().isEmpty() || code.gtin().get().endsWith(reel.gtin());
        return product && (code.serial().isPresent() ? reel.serial().equals(code.serial().get())
                : code.lot().isPresent() && reel.serial().isEmpty() && reel.lot().equals(code.lot().get()));
    }

    private Optional<Reel> withText(String text) {
        return text.isBlank() ? Optional.empty() : Stream.concat(
                survey.reels().stream().filter(reel -> reel.id().equalsIgnoreCase(text.strip())),
                survey.reels().stream().filter(reel -> reel.serial().equals(text.strip()))).findFirst();
    }

    private Reel fresh(Scanned scanned) {
        String text = scanned.text().strip();
        boolean name = scanned.code().isEmpty() && !text.isEmpty() && text.length() <= LONGEST_NAME;
        Reel blank = blank(name ? text : nextId());
        if (scanned.code().isPresent()) {
            return scanned.code().get().on(blank, year);
        }
        return name || text.isEmpty() ? blank : withSerial(blank, text);
    }

    /** An id that no reel has: R and the next number. */
    public String nextId() {
        Set<String> taken = new HashSet<>();
        survey.reels().forEach(reel -> taken.add(reel.id()));
        int number = survey.reels().size() + 1;
        while (taken.contains("R" + number)) {
            number++;
        }
        return "R" + number;
    }

    /** A reel of which nothing is known. */
    public static Reel blank(String id) {
        return new Reel(id, "", "", "", OptionalInt.empty(), "", "", "", "", "", OptionalDouble.empty(), OptionalDouble.empty(),
                Optional.empty());
    }

    private static Reel withSerial(Reel reel, String serial) {
        return new Reel(reel.id(), reel.maker(), reel.product(), reel.gtin(), reel.nominalCct(), reel.bin(), reel.lot(), serial,
                reel.made(), reel.invoice(), reel.lengthM(), reel.claimedSteps(), reel.claimedCentre());
    }

    /** Reels whose name or label has the text in it, the survey's first ones first; none for no text. */
    public List<Reel> offered(String typed) {
        String part = typed.strip().toLowerCase(Locale.ROOT);
        return part.isEmpty() ? List.of() : survey.reels().stream().filter(reel -> has(reel, part)).limit(OFFERED).toList();
    }

    /** @param part in small letters */
    public static boolean has(Reel reel, String part) {
        return Stream.concat(Stream.of(reel.id()), reel.label().stream().map(line -> line.text()))
                .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(part));
    }
}
