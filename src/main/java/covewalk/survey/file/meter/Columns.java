package covewalk.survey.file.meter;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The columns of a table, as its header and what the user said of it tell.
 *
 * @param known those with a meaning
 * @param strange the titles without one
 * @param width how many columns the header has
 */
record Columns(List<Column> known, List<String> strange, int width) {

    private static final List<Set<MeterField>> COLOURS = List.of(
            EnumSet.of(MeterField.X, MeterField.Y), EnumSet.of(MeterField.U_PRIME, MeterField.V_PRIME),
            EnumSet.of(MeterField.CCT_K, MeterField.DUV), EnumSet.of(MeterField.U_UNMARKED, MeterField.V_UNMARKED),
            EnumSet.of(MeterField.U_1960, MeterField.V_1960));

    /** All fields that can take part in giving a colour. */
    static final Set<MeterField> COLOUR_FIELDS =
            COLOURS.stream().flatMap(Set::stream).collect(Collectors.toUnmodifiableSet());

    private static final Set<MeterField> WORDS = EnumSet.of(MeterField.COVE, MeterField.TAKEN_AT, MeterField.DATE,
            MeterField.TIME, MeterField.NAME, MeterField.NOTE, MeterField.IGNORED);

    /**
     * Reads a header.
     *
     * @param titles its cells
     * @param named what the user calls a column, by its title or its number from 1
     */
    static Columns of(List<String> titles, HeaderTable table, Map<String, HeaderMeaning> named) {
        List<Column> known = new ArrayList<>();
        List<String> strange = new ArrayList<>();
        for (int i = 0; i < titles.size(); i++) {
            String title = titles.get(i);
            Optional<HeaderMeaning> meaning = named(title, i, named).or(() -> table.meaning(title));
            if (meaning.isPresent()) {
                known.add(new Column(i, title, meaning.get().field(), meaning.get().unit()));
            } else if (!title.isEmpty()) {
                strange.add(title);
            }
        }
        return new Columns(List.copyOf(known), List.copyOf(strange), titles.size());
    }

    private static Optional<HeaderMeaning> named(String title, int index, Map<String, HeaderMeaning> named) {
        return Optional.ofNullable(named.get(title)).or(() -> Optional.ofNullable(named.get(String.valueOf(index + 1))));
    }

    /** The same with the units of a row of units; a unit in the title wins. */
    Columns with(MeterRow units) {
        List<Column> better = known.stream().map(column -> {
            Optional<MeterUnit> below = unit(units.cell(column.index()));
            return below.isPresent() && below.get() != MeterUnit.NONE
                    ? new Column(column.index(), column.title(), column.field(), below.get()) : column;
        }).toList();
        return new Columns(better, strange, width);
    }

    /** Whether the row below the header holds units and nothing else. */
    static boolean areUnits(MeterRow row) {
        List<String> filled = row.cells().stream().filter(cell -> !cell.isEmpty()).toList();
        return filled.stream().allMatch(cell -> unit(cell).isPresent())
                && filled.stream().anyMatch(cell -> unit(cell).filter(unit -> unit != MeterUnit.NONE).isPresent());
    }

    private static Optional<MeterUnit> unit(String cell) {
        boolean bracketed = cell.length() > 1 && "[(".indexOf(cell.charAt(0)) >= 0 && "])".indexOf(cell.charAt(cell.length() - 1)) >= 0;
        return MeterUnit.of(bracketed ? cell.substring(1, cell.length() - 1) : cell);
    }

    List<Column> all(MeterField field) {
        return known.stream().filter(column -> column.field() == field).toList();
    }

    Optional<Column> first(MeterField field) {
        return known.stream().filter(column -> column.field() == field).findFirst();
    }

    /** The title of the column that goes to this column of the log. */
    String titleOf(String logColumn) {
        return known.stream().filter(column -> column.field().code().equals(logColumn)).findFirst().map(Column::title).orElse(logColumn);
    }

    /** Whether the columns can give a colour. */
    boolean haveColour() {
        return COLOURS.stream().anyMatch(pair -> pair.stream().allMatch(field -> first(field).isPresent()));
    }

    /** How much of a header this is: columns with a use, and above all a colour. */
    int score() {
        long useful = known.stream().filter(column -> column.field() != MeterField.IGNORED).count();
        return (int) useful + (haveColour() ? 100 : 0);
    }

    /** Puts the two halves of a title such as D(u,v) together again where the comma between them was a separator. */
    static List<String> mended(List<String> titles) {
        List<String> whole = new ArrayList<>();
        for (String title : titles) {
            int last = whole.size() - 1;
            boolean closes = title.indexOf(')') >= 0 && title.indexOf('(') < 0;
            boolean open = last >= 0 && whole.get(last).indexOf('(') >= 0 && whole.get(last).indexOf(')') < 0;
            if (closes && open) {
                whole.set(last, whole.get(last) + "," + title);
            } else {
                whole.add(title);
            }
        }
        return whole;
    }

    /** Cells of number columns, for what can only be told from all of them. */
    List<String> numberCells(List<MeterRow> rows) {
        List<Column> numbers = known.stream().filter(column -> !WORDS.contains(column.field())).toList();
        return rows.stream().flatMap(row -> numbers.stream().map(column -> row.cell(column.index()))).toList();
    }
}
