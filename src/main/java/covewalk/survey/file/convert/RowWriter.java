package covewalk.survey.file.convert;

import covewalk.survey.Problem;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Writes converted rows: the cells as they were typed, blank ones of the six quantities filled in, missing columns
 * appended, and last the problem. Cells beyond the header stay, behind the problem.
 */
final class RowWriter {

    private final TableHead head;
    private final SignificantDigits digits;
    private final Locale locale;
    private final List<Quantity> appended;
    private final Quantity[] byColumn;
    private final RowColour colour = new RowColour();
    private long problems;

    RowWriter(TableHead head, ConvertOptions options) {
        this.head = head;
        this.digits = new SignificantDigits(options.digits());
        this.locale = options.locale();
        this.appended = head.appended();
        this.byColumn = new Quantity[head.width()];
        head.places().forEach((quantity, column) -> byColumn[column] = quantity);
    }

    /** The header, with the titles of the appended columns. */
    void writeHeader(byte[] bytes, RowBuffer out) {
        out.add(bytes, head.start(), head.end());
        for (Quantity quantity : appended) {
            out.add(head.separator());
            out.addText(quantity.title());
        }
        if (head.problemColumn() < 0) {
            out.add(head.separator());
            out.addText("problem");
        }
    }

    void write(RowCells row, int start, int end, RowBuffer out) {
        if (row.spoiled()) {
            writeSpoiled(row, start, end, out);
            return;
        }
        colour.take(row, head);
        for (int column = 0; column < head.width(); column++) {
            separate(column, out);
            writeCell(row, column, out);
        }
        for (Quantity quantity : appended) {
            out.add(head.separator());
            writeValue(quantity, out);
        }
        if (head.problemColumn() < 0) {
            out.add(head.separator());
            writeProblem(row, out);
        }
        for (int column = head.width(); column < row.count(); column++) {
            out.add(head.separator());
            out.add(row.bytes(), row.start(column), row.end(column));
        }
        problems += colour.problem().isEmpty() ? 0 : 1;
    }

    /** A row of blank cells becomes as wide as the others; a line with nothing on it stays one. */
    void writeBlank(RowCells row, int start, int end, RowBuffer out) {
        out.add(row.bytes(), start, end);
        int width = head.width() + appended.size() + (head.problemColumn() < 0 ? 1 : 0);
        for (int column = row.count(); column < width && row.count() > 1; column++) {
            out.add(head.separator());
        }
    }

    private void separate(int column, RowBuffer out) {
        if (column > 0) {
            out.add(head.separator());
        }
    }

    private void writeCell(RowCells row, int column, RowBuffer out) {
        if (column == head.problemColumn()) {
            writeProblem(row, out);
        } else if (byColumn[column] != null && row.isBlank(column)) {
            writeValue(byColumn[column], out);
        } else if (column < row.count()) {
            out.add(row.bytes(), row.start(column), row.end(column));
        }
    }

    private void writeValue(Quantity quantity, RowBuffer out) {
        double value = colour.value(quantity);
        if (value == value) { // not NaN
            digits.write(value, out);
        }
    }

    private void writeProblem(RowCells row, RowBuffer out) {
        if (!colour.problem().isEmpty()) {
            addSentence(Problem.refusal(colour.problem(), found(row)), out);
        }
    }

    /** The cells of the pair as they were typed: numbers, or whatever stands there instead. */
    private String found(RowCells row) {
        StringBuilder found = new StringBuilder();
        for (Quantity quantity : Quantity.values()) {
            int column = head.place(quantity);
            if (column >= 0 && !row.isBlank(column)) {
                int start = row.innerStart(column);
                int end = Math.min(row.innerEnd(column), start + 20);
                found.append(found.length() > 0 ? " " : "").append(quantity.title()).append(' ')
                        .append(new String(row.bytes(), start, end - start, StandardCharsets.ISO_8859_1));
            }
        }
        return found.length() == 0 ? "blank cells" : found.toString();
    }

    private void addSentence(Problem problem, RowBuffer out) {
        byte[] sentence = problem.sentence(locale).getBytes(StandardCharsets.ISO_8859_1);
        out.addQuoted(sentence, 0, sentence.length);
    }

    /** A line whose cells cannot be told apart stays whole, as one cell. */
    private void writeSpoiled(RowCells row, int start, int end, RowBuffer out) {
        out.addQuoted(row.bytes(), start, end);
        int between = head.problemColumn() < 0 ? head.width() + appended.size() : head.problemColumn();
        byte[] separators = new byte[Math.max(between, 1)];
        Arrays.fill(separators, (byte) head.separator());
        out.add(separators, 0, separators.length);
        addSentence(Problem.refusal("convert.open-quote"), out);
        problems++;
    }

    /** How many rows written so far have a problem. */
    long problems() {
        return problems;
    }
}
