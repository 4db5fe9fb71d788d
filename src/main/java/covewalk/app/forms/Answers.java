package covewalk.app.forms;

import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.StatedColour;
import covewalk.survey.Typed;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * What was typed in one line of a form. Every other line answers what stood there before, so that a record is read in one
 * go; a line that cannot be read answers what stood there before too, and says why.
 */
public final class Answers {

    private static final double LARGEST = 1e9;

    private final String name;
    private final String text;
    private final Writing writing;
    private final Texts texts;
    private String refusal = "";

    /** @param name of the line that was typed in */
    public Answers(String name, String text, Writing writing, Texts texts) {
        this.name = name;
        this.text = text.strip();
        this.writing = writing;
        this.texts = texts.of(Answers.class);
    }

    /** Why the line cannot be read; empty where it can. */
    public String refusal() {
        return refusal;
    }

    public boolean isAbout(String line) {
        return name.equals(line);
    }

    /** As it was typed or scanned. */
    String text() {
        return text;
    }

    public String text(String line, String before) {
        return isAbout(line) ? text : before;
    }

    /** A text that cannot be empty. */
    public String needed(String line, String before) {
        if (isAbout(line) && text.isEmpty()) {
            refuse(texts.get("answer.needed"));
            return before;
        }
        return text(line, before);
    }

    public OptionalDouble number(String line, OptionalDouble before, Bounds bounds) {
        return isAbout(line) ? read(Typed.of(text), before, bounds, "answer.no-number") : before;
    }

    /** A number that cannot be empty. */
    public double needed(String line, double before, Bounds bounds) {
        return needed(number(line, OptionalDouble.of(before), bounds), before);
    }

    /** In m. */
    public OptionalDouble length(String line, OptionalDouble before, Bounds bounds) {
        return isAbout(line) ? read(writing.metres(text), before, bounds, "answer.no-length") : before;
    }

    /** A length that cannot be empty, m. */
    public double neededLength(String line, double before, Bounds bounds) {
        return needed(length(line, OptionalDouble.of(before), bounds), before);
    }

    public OptionalInt whole(String line, OptionalInt before, int least, int most) {
        OptionalDouble number = number(line, before.isPresent() ? OptionalDouble.of(before.getAsInt()) : OptionalDouble.empty(),
                Bounds.from(least, most));
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            refuse(texts.get("answer.no-whole", text));
            return before;
        }
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    public Optional<LocalDate> date(String line, Optional<LocalDate> before) {
        if (!isAbout(line) || text.isEmpty()) {
            return isAbout(line) ? Optional.empty() : before;
        }
        Optional<LocalDate> day = Writing.dateOf(text);
        if (day.isEmpty()) {
            refuse(texts.get("answer.no-date", text));
        }
        return day.or(() -> before);
    }

    public Optional<StatedColour> colour(String line, Optional<StatedColour> before) {
        if (!isAbout(line) || text.isEmpty()) {
            return isAbout(line) ? Optional.empty() : before;
        }
        Optional<StatedColour> colour = ColourText.read(text, this::refuse);
        if (colour.isEmpty() && refusal.isEmpty()) {
            refuse(texts.get("answer.no-colour", text));
        }
        return colour.or(() -> before);
    }

    /** One of some words; the last one that was chosen where the text is none of them. */
    public <E> E choice(String line, E before, Function<String, Optional<E>> of) {
        return isAbout(line) ? of.apply(text).orElse(before) : before;
    }

    public boolean flag(String line, boolean before) {
        return isAbout(line) ? Boolean.parseBoolean(text) : before;
    }

    public void refuse(Problem problem) {
        refuse(problem.sentence(texts.locale()));
    }

    private void refuse(String sentence) {
        refusal = sentence;
    }

    private double needed(OptionalDouble answer, double before) {
        if (answer.isEmpty()) {
            refuse(texts.get("answer.needed"));
        }
        return answer.orElse(before);
    }

    private OptionalDouble read(Optional<Typed> typed, OptionalDouble before, Bounds bounds, String otherwise) {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (typed.isEmpty() || Math.abs(typed.get().value()) > LARGEST) {
            refuse(texts.get(otherwise, text));
            return before;
        }
        Optional<Problem> outside = bounds.check(typed.get().value(), text);
        outside.ifPresent(this::refuse);
        return outside.isPresent() ? before : OptionalDouble.of(typed.get().value());
    }
}
