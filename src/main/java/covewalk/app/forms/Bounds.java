package covewalk.app.forms;

import covewalk.survey.Problem;
import java.util.Optional;

/**
 * Which numbers a line takes; the same as a survey file takes.
 *
 * @param leastToo whether the least number is one of them
 * @param mostToo whether the greatest number is one of them
 */
public record Bounds(double least, boolean leastToo, double most, boolean mostToo) {

    public static Bounds from(double least, double most) {
        return new Bounds(least, true, most, true);
    }

    public static Bounds above(double least, double most) {
        return new Bounds(least, false, most, true);
    }

    public static Bounds between(double least, double most) {
        return new Bounds(least, false, most, false);
    }

    /** What is wrong with the number, written as {@code text}; nothing for one within. */
    Optional<Problem> check(double number, String text) {
        boolean within = (leastToo ? number >= least : number > least) && (mostToo ? number <= most : number < most);
        String key = leastToo ? "json.range" : mostToo ? "json.range.above" : "json.range.between";
        return within ? Optional.empty() : Optional.of(Problem.refusal(key, text, words(least), words(most)));
    }

    private static String words(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
    }
}
