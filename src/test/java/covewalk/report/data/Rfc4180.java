package covewalk.report.data;

import java.util.ArrayList;
import java.util.List;

/** Reads a table by the grammar of RFC 4180, section 2, and nothing looser; independent of what writes it. */
public final class Rfc4180 {

    private final String text;
    private int at;

    private Rfc4180(String text) {
        this.text = text;
    }

    public static List<List<String>> rows(String text) {
        Rfc4180 reader = new Rfc4180(text);
        List<List<String>> rows = new ArrayList<>();
        while (reader.at < text.length()) {
            rows.add(reader.row());
        }
        return rows;
    }

    private List<String> row() {
        List<String> row = new ArrayList<>();
        row.add(cell());
        while (text.charAt(at) == ',') {
            at++;
            row.add(cell());
        }
        if (!text.startsWith("\r\n", at)) {
            throw new AssertionError("no line end at " + at);
        }
        at += 2;
        return row;
    }

    private String cell() {
        return text.charAt(at) == '"' ? quoted() : plain();
    }

    private String plain() {
        int start = at;
        while (",\r\n\"".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(start, at);
    }

    private String quoted() {
        StringBuilder cell = new StringBuilder();
        for (at++; text.charAt(at) != '"' || text.startsWith("\"\"", at); at++) {
            cell.append(text.charAt(at));
            at += text.charAt(at) == '"' ? 1 : 0;
        }
        at++;
        return cell.toString();
    }
}
