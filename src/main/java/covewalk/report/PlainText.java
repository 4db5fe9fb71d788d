package covewalk.report;

import java.util.ArrayList;
import java.util.List;

/** Text for a terminal: one line is one line, and nothing in it can steer the terminal or turn its reading direction. */
final class PlainText {

    private PlainText() {
    }

    /** Control characters, and marks that turn the reading direction, become spaces. */
    static String calm(String text) {
        StringBuilder calm = new StringBuilder();
        text.codePoints().forEach(c -> calm.appendCodePoint(unruly(c) ? ' ' : c));
        return calm.toString();
    }

    private static boolean unruly(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL || type == Character.FORMAT && c != 0x200D // that one joins emoji
                || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR || type == Character.SURROGATE;
    }

    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - length(text))) + text;
    }

    static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - length(text)));
    }

    static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** Words in lines of at most {@code width}, longer words by themselves; later lines are indented by {@code indent}. */
    static List<String> wrapped(String text, int width, int indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : calm(text).strip().split("\\s+")) {
            if (!line.toString().isBlank() && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent));
            }
            line.append(line.isEmpty() || line.toString().isBlank() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
