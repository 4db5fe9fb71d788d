package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.ReelKind;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.survey.Reel;
import covewalk.survey.label.LabelCode;
import covewalk.survey.label.Scanned;
import java.util.List;
import java.util.Optional;

/** Makes reels of the rows of a table. */
final class ReelRow {

    private final List<ReelColumn> columns;
    private final Writing writing;
    private final Texts texts;
    private final int year;
    private final ReelKind kind;

    /** @param columns what each of them holds, from the left */
    ReelRow(List<ReelColumn> columns, Writing writing, Texts texts, int year) {
        this.columns = columns;
        this.writing = writing;
        this.texts = texts;
        this.year = year;
        kind = new ReelKind(() -> year);
    }

    /**
     * A reel, or why the row gives none.
     *
     * @param trouble empty where it does
     */
    record Read(Reel reel, String trouble) {
    }

    /** @param id of a reel that the table gives none */
    Read read(PastedTable.Row row, String id) {
        Read read = new Read(ReelFinder.blank(id), "");
        for (int i = 0; i < columns.size() && read.trouble.isEmpty(); i++) {
            String cell = row.cell(i);
            read = cell.isEmpty() || columns.get(i) == ReelColumn.NOTHING ? read
                    : columns.get(i) == ReelColumn.CODE ? scanned(read.reel, cell) : answered(read.reel, columns.get(i), cell);
        }
        return read;
    }

    private Read scanned(Reel reel, String cell) {
        Optional<LabelCode> code = Scanned.of(cell).code();
        return code.map(label -> new Read(label.on(reel, year), "")).orElseGet(() -> answered(reel, ReelColumn.SERIAL, cell));
    }

    private Read answered(Reel reel, ReelColumn column, String cell) {
        Answers answers = new Answers(column.field(), plain(column, cell), writing, texts);
        Reel after = kind.read(answers, reel);
        return new Read(after, answers.refusal().isEmpty() ? "" : texts.get("column." + column.field()) + ": " + answers.refusal());
    }

    /** Without the units that people write behind numbers. */
    private static String plain(ReelColumn column, String cell) {
        return switch (column) {
            case NOMINAL_CCT -> cell.replaceAll("(?i)\\s*k(elvin)?$", "");
            case CLAIMED_STEPS -> cell.replaceAll("(?i)\\s*(sdcm|steps?|macadam|schritte?)$", "").replaceAll("^[<\u2264]\\s*", "");
            default -> cell;
        };
    }
}
