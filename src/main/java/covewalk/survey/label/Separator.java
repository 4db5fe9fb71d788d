package covewalk.survey.label;

import java.util.regex.Pattern;

/**
 * The end of an element of any length (FNC1). Scanners send it as the character GS; a text field shows it as the sign for
 * it, and some scanners are set to write it out.
 */
final class Separator {

    static final char GS = '\u001d';
    private static final Pattern WRITTEN = Pattern.compile("\u241d|<GS>|\\{GS\\}");

    private Separator() {
    }

    /** All of them as GS, none at the beginning, where it only says that the code is one of GS1. */
    static String plain(String text) {
        String plain = WRITTEN.matcher(text).replaceAll(String.valueOf(GS));
        return plain.startsWith(String.valueOf(GS)) ? plain.substring(1) : plain;
    }

    static boolean isIn(String text) {
        return text.indexOf(GS) >= 0 || WRITTEN.matcher(text).find();
    }

    /** The text without any, as a person would write it down. */
    static String out(String text) {
        return WRITTEN.matcher(text).replaceAll("").replace(String.valueOf(GS), "");
    }
}
