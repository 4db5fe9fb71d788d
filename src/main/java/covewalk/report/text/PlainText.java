package covewalk.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Text for a terminal: one line is one line, and nothing in it can steer the terminal or turn its reading direction. */
public final class PlainText {

    private PlainText() {
    }

    /** Control characters, and marks that turn the reading direction, become spaces. */
    public static String calm(String text) {
        StringBuilder calm = new StringBuilder();
        text.codePoints().forEach(c -> calm.appendCodePoint(unruly(c) ? ' ' : c));
        return calm.toString();
    }

    private static boolean unruly(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL || type == Character.FORMAT && c != 0x200D // that one joins emoji
                || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR || type == Character.SURROGATE;
    }

    /** Rows in columns as wide as they need to be, two spaces before each; those of {@code toTheRight} end alike. */
    static List<String> columns(List<List<String>> rows, Set<Integer> toTheRight) {
        int[] widths = new int[rows.get(0).size()];
        rows.forEach(row -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        });
        return rows.stream().map(row -> line(row, widths, toTheRight)).toList();
    }

    private static String line(List<String> row, int[] widths, Set<Integer> toTheRight) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append("  ").append(toTheRight.contains(i) ? right(row.get(i), widths[i]) : left(row.get(i), widths[i]));
        }
        return line.toString().stripTrailing();
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - length(text))) + text;
    }

    private static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - length(text)));
    }

    private static int length(String text) {
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
