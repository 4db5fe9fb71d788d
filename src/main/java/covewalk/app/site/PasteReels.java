package covewalk.app.site;

import covewalk.app.forms.Description;
import covewalk.app.forms.Refusals;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * A table of reels pasted from a spreadsheet. Columns go by their titles; one that is not known is asked for. Rows that
 * cannot be read stay in the box with the reason, and the others are added.
 */
final class PasteReels {

    private static final int MOST_TOLD = 8;
    private static final int EXAMPLE = 24;

    private final Description description;
    private final Supplier<Writing> writing;
    private final IntSupplier year;
    private final Texts texts;
    private final LayRow layRow;
    private final StringProperty text = new SimpleStringProperty("");
    private final ObservableList<ReelColumn> columns = FXCollections.observableArrayList();
    private final ReadOnlyIntegerWrapper asked = new ReadOnlyIntegerWrapper(-1);
    private final ReadOnlyBooleanWrapper ready = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private PastedTable table = PastedTable.of("");
    private boolean titled;

    PasteReels(Description description, Supplier<Writing> writing, IntSupplier year, Texts texts) {
        this.description = description;
        this.writing = writing;
        this.year = year;
        this.texts = texts;
        layRow = new LayRow(description, writing, texts);
        text.addListener((property, before, now) -> read());
        read();
    }

    /** What may be laid of the table that was added last. */
    LayRow layRow() {
        return layRow;
    }

    StringProperty textProperty() {
        return text;
    }

    /** What each column holds; null where that is not known yet. */
    ObservableList<ReelColumn> columns() {
        return columns;
    }

    /** The column that is asked for; -1 where none is. */
    ReadOnlyIntegerProperty askedProperty() {
        return asked.getReadOnlyProperty();
    }

    /** Whether there is something to add. */
    ReadOnlyBooleanProperty readyProperty() {
        return ready.getReadOnlyProperty();
    }

    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** Rows that cannot be read, and why. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private void read() {
        table = PastedTable.of(text.get());
        List<Optional<ReelColumn>> titles = table.rows().isEmpty() ? List.of() : table.rows().get(0).cells().stream().map(ReelColumn::of).toList();
        titled = titles.stream().anyMatch(Optional::isPresent);
        List<ReelColumn> known = new ArrayList<>();
        for (int i = 0; i < table.columns(); i++) {
            ReelColumn column = i < titles.size() ? titles.get(i).orElse(null) : null;
            known.add(known.contains(column) ? null : column); // the same title twice: somebody has to say which counts
        }
        columns.setAll(known);
        askNext();
        trouble.set("");
    }

    private void askNext() {
        asked.set(columns.indexOf(null));
        boolean something = columns.stream().anyMatch(column -> column != null && column != ReelColumn.NOTHING);
        ready.set(asked.get() < 0 && something && !rows().isEmpty());
        says.set(table.rows().isEmpty() ? "" : texts.count("paste.rows", rows().size()) + " " + recognised());
    }

    private String recognised() {
        String list = columns.stream().filter(column -> column != null && column != ReelColumn.NOTHING)
                .map(column -> texts.get("column." + column.field())).collect(Collectors.joining(", "));
        return list.isEmpty() ? texts.get("paste.no-columns") : texts.get("paste.columns", list);
    }

    private List<PastedTable.Row> rows() {
        return titled ? table.rows().subList(1, table.rows().size()) : table.rows();
    }

    /** The column that is asked for, by its title, number and first cell. */
    String question() {
        String title = titled ? table.rows().get(0).cell(asked.get()) : "";
        String example = rows().stream().map(row -> row.cell(asked.get())).filter(cell -> !cell.isEmpty()).findFirst().orElse("");
        return texts.get("paste.ask", Integer.toString(asked.get() + 1), title,
                example.length() <= EXAMPLE ? example : example.substring(0, EXAMPLE) + "\u2026");
    }

    /** What the column holds that is asked for; another column that was said to hold the same is asked for again. */
    void answer(ReelColumn column) {
        int before = column == ReelColumn.NOTHING ? -1 : columns.indexOf(column);
        if (before >= 0) {
            columns.set(before, null);
        }
        columns.set(asked.get(), column);
        askNext();
    }

    /** Begins asking anew, column by column. */
    void askAll() {
        IntStream.range(0, columns.size()).forEach(i -> columns.set(i, null));
        askNext();
    }

    /** Adds what can be read; the rest stays. */
    void add() {
        ReelRow reader = new ReelRow(List.copyOf(columns), writing.get(), texts, year.getAsInt());
        Map<String, Reel> reels = new HashMap<>();
        description.survey().reels().forEach(reel -> reels.put(reel.id(), reel));
        List<Reel> all = new ArrayList<>(description.survey().reels());
        List<PastedTable.Row> left = new ArrayList<>();
        List<String> why = new ArrayList<>();
        List<Reel> row = new ArrayList<>();
        int there = 0;
        int number = all.size() + 1;
        for (PastedTable.Row pasted : rows()) {
            number = free(number, reels.keySet());
            ReelRow.Read read = reader.read(pasted, "R" + number);
            Reel same = reels.get(read.reel().id());
            if (!read.trouble().isEmpty() || same != null && !same.equals(read.reel())) {
                left.add(pasted);
                why.add(texts.get("paste.row", Integer.toString(pasted.line()),
                        read.trouble().isEmpty() ? texts.get("paste.taken", read.reel().id()) : read.trouble()));
            } else if (same == null) {
                reels.put(read.reel().id(), read.reel());
                all.add(read.reel());
                row.add(read.reel());
            } else {
                there++;
                row.add(same);
            }
        }
        added(all, there, left, why);
        layRow.offer(left.isEmpty() && trouble.get().isEmpty() ? row : List.of());
    }

    private static int free(int from, Set<String> taken) {
        int number = from;
        while (taken.contains("R" + number)) {
            number++;
        }
        return number;
    }

    private void added(List<Reel> all, int there, List<PastedTable.Row> left, List<String> why) {
        int added = all.size() - description.survey().reels().size();
        List<Problem> problems = description.change(survey -> survey.withReels(all));
        if (!problems.isEmpty()) {
            trouble.set(new Refusals(texts).sentences(problems));
            return;
        }
        List<ReelColumn> answered = List.copyOf(columns);
        text.set(left.isEmpty() ? "" : (titled ? table.rows().get(0).text() + "\n" : "")
                + left.stream().map(PastedTable.Row::text).collect(Collectors.joining("\n")));
        if (!left.isEmpty() && columns.size() == answered.size()) {
            columns.setAll(answered);
            askNext();
        }
        says.set(texts.get("paste.added", Integer.toString(added), Integer.toString(there), Integer.toString(left.size())));
        trouble.set(why.stream().limit(MOST_TOLD).collect(Collectors.joining("\n")));
    }
}
