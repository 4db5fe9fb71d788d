package covewalk.app.forms;

import covewalk.survey.Survey;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One part of a survey.
 *
 * @param path as the problems of a description name it, such as {@code coves[1]}
 * @param in the part in a survey; empty where the survey has none of it any more
 * @param put the survey with another such part in its place
 */
public record Part<T>(String path, Function<Survey, Optional<T>> in, BiFunction<Survey, T, Survey> put) {

    /** A part that every survey has. */
    public static <T> Part<T> always(String path, Function<Survey, T> in, BiFunction<Survey, T, Survey> put) {
        return new Part<>(path, survey -> Optional.of(in.apply(survey)), put);
    }
}
