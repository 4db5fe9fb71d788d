package covewalk.survey.file.disk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.stream.Collectors;

/** Writes rows of comma-separated text (RFC 4180), each on one line. */
public final class CsvText {

    private CsvText() {
    }

    /** One row without its line end. Line breaks and other control characters become spaces. */
    public static String row(List<String> cells) {
        return cells.stream().map(CsvText::cell).collect(Collectors.joining(","));
    }

    public static byte[] bytes(String text) {
        return text.getBytes(UTF_8);
    }

    private static String cell(String text) {
        String line = oneLine(text);
        boolean plain = line.indexOf(',') < 0 && line.indexOf('"') < 0;
        return plain ? line : '"' + line.replace("\"", "\"\"") + '"';
    }

    public static String oneLine(String text) {
        boolean clean = text.chars().noneMatch(CsvText::breaksALine);
        if (clean) {
            return text;
        }
        StringBuilder line = new StringBuilder(text.length());
        text.replace("\r\n", "\n").chars().forEach(c -> line.append(breaksALine(c) ? ' ' : (char) c));
        return line.toString();
    }

    private static boolean breaksALine(int c) {
        return c < ' ' || c == 0x7f;
    }
}
