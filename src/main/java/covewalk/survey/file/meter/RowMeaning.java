package covewalk.survey.file.meter;

import covewalk.survey.LuxCheck;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a reading of each row of a meter's table. */
final class RowMeaning {

    private static final int LONGEST_NOTE = 400;

    private final MeterTable table;
    private final Columns columns;
    private final Place place;
    private final String setUp;
    private final DecimalMark mark;
    private final RowTimes times;

    RowMeaning(MeterTable table, Place place, String setUp) {
        this.table = table;
        this.columns = table.columns();
        this.place = place;
        this.setUp = setUp;
        this.mark = DecimalMark.of(columns.numberCells(table.rows()));
        this.times = new RowTimes(table);
    }

    /** @param index the row's place among the file's rows, from 0 */
    RowOutcome read(MeterRow row, int index) {
        Optional<Problem> unfit = new RowFitness(table).problem(row);
        if (unfit.isPresent()) {
            return RowOutcome.setAside(row, unfit.get());
        }
        NumberCells cells = new NumberCells(columns, mark, row);
        ColourCells colour = new ColourCells(cells);
        if (colour.typed().isEmpty()) {
            return RowOutcome.setAside(row, colour.whyNone());
        }
        Optional<Problem> wrong = colour.problem().or(() -> place.problem(cells, index)).or(() -> luxProblem(cells));
        return wrong.isPresent() ? RowOutcome.setAside(row, wrong.get())
                : RowOutcome.kept(row, reading(row, index, cells, colour));
    }

    private Reading reading(MeterRow row, int index, NumberCells cells, ColourCells colour) {
        String cove = place.cove(cells).orElseThrow().id();
        Typed positionM = place.positionM(cells, index).orElseThrow();
        List<String> notes = new ArrayList<>(words(row));
        notes.addAll(colour.leftOver());
        Optional<Typed> lux = lux(cells, notes);
        noteForeignLength(cells, notes);
        String takenAt = times.iso(row).orElse("");
        if (takenAt.isEmpty()) {
            RowTimes.written(columns, row).ifPresent(written -> notes.add("taken " + written));
        }
        return new Reading("", cove, positionM, Role.WALK, setUp, 1, colour.typed(), lux, takenAt, "", note(notes), 0);
    }

    /** A cell of a whole page would make a row of the log that nobody can read; the original has all of it. */
    private static String note(List<String> parts) {
        String note = String.join("; ", parts);
        return note.length() <= LONGEST_NOTE ? note : note.substring(0, LONGEST_NOTE) + "...";
    }

    private List<String> words(MeterRow row) {
        return columns.known().stream()
                .filter(column -> column.field() == MeterField.NAME || column.field() == MeterField.NOTE)
                .map(column -> row.cell(column.index())).filter(cell -> !cell.isEmpty()).toList();
    }

    /** Illuminance, or luminance in its place; what is converted or no number goes to the note as it was written. */
    private static Optional<Typed> lux(NumberCells cells, List<String> notes) {
        MeterField field = brightness(cells);
        if (cells.isBlank(field)) {
            return Optional.empty();
        }
        Optional<Typed> number = cells.number(field);
        MeterUnit unit = cells.unit(field);
        if (number.isEmpty() || !unit.isLogUnit() || field == MeterField.LUMINANCE) {
            notes.add(cells.title(field) + " " + cells.text(field));
        }
        return number.map(found -> Brightness.inLux(found, unit));
    }

    private static MeterField brightness(NumberCells cells) {
        return cells.isBlank(MeterField.LUX) ? MeterField.LUMINANCE : MeterField.LUX;
    }

    /** What a log refuses would keep the whole survey from being opened. */
    private static Optional<Problem> luxProblem(NumberCells cells) {
        MeterField field = brightness(cells);
        return cells.number(field).flatMap(LuxCheck::problem).filter(Problem::refused).map(problem -> problem.inColumn(cells.title(field)));
    }

    private void noteForeignLength(NumberCells cells, List<String> notes) {
        String written = cells.text(MeterField.POSITION);
        boolean asWritten = CellNumber.read(written, mark, MeterUnit.METRE).isPresent()
                && (cells.unit(MeterField.POSITION) == MeterUnit.METRE || cells.unit(MeterField.POSITION) == MeterUnit.NONE);
        if (!written.isEmpty() && !asWritten) {
            notes.add(cells.title(MeterField.POSITION) + " " + written);
        }
    }
}
