package covewalk.survey.file;

import covewalk.survey.Problem;
import java.util.Optional;

/**
 * Which numbers a field of the description takes.
 *
 * @param leastToo whether the least number is one of them
 * @param mostToo whether the greatest number is one of them
 */
record Range(double least, boolean leastToo, double most, boolean mostToo) {

    static Range from(double least, double most) {
        return new Range(least, true, most, true);
    }

    static Range above(double least, double most) {
        return new Range(least, false, most, true);
    }

    static Range between(double least, double most) {
        return new Range(least, false, most, false);
    }

    private boolean holds(double number) {
        return (leastToo ? number >= least : number > least) && (mostToo ? number <= most : number < most);
    }

    /** What is wrong with the number, written as {@code text}; nothing for one in range. */
    Optional<Problem> check(double number, String text) {
        if (holds(number)) { // false for what is not finite
            return Optional.empty();
        }
        String key = leastToo ? "json.range" : mostToo ? "json.range.above" : "json.range.between";
        return Optional.of(Problem.refusal(key, text, words(least), words(most)));
    }

    private static String words(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
    }
}
