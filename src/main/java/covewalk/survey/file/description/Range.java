package covewalk.survey.file.description;

import covewalk.survey.Problem;

/**
 * Which numbers a field of the description takes.
 *
 * @param leastToo whether the least number is one of them
 * @param mostToo whether the greatest number is one of them
 */
public record Range(double least, boolean leastToo, double most, boolean mostToo) {

    public static Range from(double least, double most) {
        return new Range(least, true, most, true);
    }

    static Range above(double least, double most) {
        return new Range(least, false, most, true);
    }

    static Range between(double least, double most) {
        return new Range(least, false, most, false);
    }

    /** Never what is not finite. */
    boolean holds(double number) {
        return (leastToo ? number >= least : number > least) && (mostToo ? number <= most : number < most);
    }

    /** What is wrong with a number that it does not hold, written as {@code text}. */
    Problem problem(String text) {
        String key = leastToo ? "json.range" : mostToo ? "json.range.above" : "json.range.between";
        return Problem.refusal(key, text, words(least), words(most));
    }

    private static String words(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
    }
}
