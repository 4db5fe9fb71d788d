package covewalk.survey.file.disk;

import covewalk.survey.Problem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What came of something that may be refused.
 *
 * @param value what was asked for; empty where it was refused
 * @param problems why it was refused, or what the user should know although it went well
 */
public record Outcome<T>(Optional<T> value, List<Problem> problems) {

    public Outcome {
        Objects.requireNonNull(value, "value");
        problems = List.copyOf(problems);
    }

    public static <T> Outcome<T> of(T value, List<Problem> toKnow) {
        return new Outcome<>(Optional.of(value), toKnow);
    }

    public static <T> Outcome<T> of(T value) {
        return of(value, List.of());
    }

    public static <T> Outcome<T> refused(List<Problem> why) {
        return new Outcome<>(Optional.empty(), why);
    }

    public static <T> Outcome<T> refused(Problem why) {
        return refused(List.of(why));
    }

    public boolean refused() {
        return value.isEmpty();
    }
}
