package covewalk.report.pdf;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/**
 * A text as paper can show it: {@value #LACKING} stands for each letter that no font on board has, and for each that is
 * written from right to left, whose order and joining the layout does not know.
 *
 * @param text with the same number of letters
 * @param lacking the letters that were put aside, each once, in the order in which they were met
 */
record PrintableText(String text, Set<Integer> lacking) {

    static final char LACKING = '#';

    private static final int NAMED = 5;

    static PrintableText of(String text, IntPredicate have) {
        StringBuilder printable = new StringBuilder(text.length());
        Set<Integer> lacking = new LinkedHashSet<>();
        text.codePoints().forEach(c -> {
            if (have.test(c) && !fromTheRight(c)) {
                printable.appendCodePoint(c);
            } else {
                printable.append(LACKING);
                lacking.add(c);
            }
        });
        return new PrintableText(printable.toString(), lacking);
    }

    /** The first of what lacks, as Unicode numbers it: they cannot be printed. */
    String named() {
        return lacking.stream().limit(NAMED).map(c -> String.format(Locale.ROOT, "U+%04X", c)).collect(Collectors.joining(", "))
                + (lacking.size() > NAMED ? ", …" : "");
    }

    private static boolean fromTheRight(int c) {
        byte direction = Character.getDirectionality(c);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
