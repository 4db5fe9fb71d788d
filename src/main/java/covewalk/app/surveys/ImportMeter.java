package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.FolderText;
import covewalk.app.forms.Writing;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Typed;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.log.ReadingLog;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.meter.HeaderTable;
import covewalk.survey.file.meter.ImportOptions;
import covewalk.survey.file.meter.ImportResult;
import covewalk.survey.file.meter.MeterImport;
import covewalk.survey.file.meter.Stations;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Adds a meter's exported file to the survey that is open; what the file does not say is asked for in the page. */
final class ImportMeter {

    private final Desk desk;
    private final Path home;
    private final Texts texts;
    private final ImportWords words;
    private final StringProperty file = new SimpleStringProperty("");
    private final StringProperty cove = new SimpleStringProperty("");
    private final ObservableList<String> coves = FXCollections.observableArrayList();
    /** Held here: whoever listens to it would be forgotten with it. */
    private final ObservableList<String> seen = FXCollections.unmodifiableObservableList(coves);
    private final StringProperty start = new SimpleStringProperty("");
    private final StringProperty every = new SimpleStringProperty("");
    private final StringProperty columns = new SimpleStringProperty("");
    private final BooleanProperty back = new SimpleBooleanProperty();
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper possible = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    ImportMeter(Desk desk, Path home, Texts texts) {
        this.desk = desk;
        this.home = home;
        this.texts = texts;
        words = new ImportWords(texts);
        desk.surveyProperty().addListener((property, before, now) -> follow());
        follow();
    }

    /** Takes in what the survey has now. */
    void follow() {
        OpenSurvey open = desk.survey();
        possible.set(open != null && !open.survey().coves().isEmpty());
        coves.setAll(open == null ? List.of() : open.survey().coves().stream().map(Cove::id).toList());
        if (!coves.contains(cove.get())) {
            cove.set(coves.size() == 1 ? coves.get(0) : "");
        }
    }

    StringProperty fileProperty() {
        return file;
    }

    /** The cove of rows that name none; empty where nobody said. */
    StringProperty coveProperty() {
        return cove;
    }

    ObservableList<String> coves() {
        return seen;
    }

    /** Where the first row was read. */
    StringProperty startProperty() {
        return start;
    }

    /** From one row to the next. */
    StringProperty everyProperty() {
        return every;
    }

    /** What columns hold whose titles are not known, such as {@code Tone=cct_k; Note 2=ignored}. */
    StringProperty columnsProperty() {
        return columns;
    }

    /** Whether the walk went towards the datum. */
    BooleanProperty backProperty() {
        return back;
    }

    ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** Whether a survey with a cove is open. */
    ReadOnlyBooleanProperty possibleProperty() {
        return possible.getReadOnlyProperty();
    }

    /** What came of it. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** What was refused or set aside, and what is asked. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    void start() {
        says.set("");
        Optional<Path> there = FolderText.path(file.get(), home);
        Optional<Stations> stations = stations();
        if (there.isEmpty() || !Files.isRegularFile(there.get())) {
            trouble.set(texts.get("import.no-file"));
        } else if (stations.isEmpty()) {
            trouble.set(texts.get("import.half"));
        } else {
            trouble.set("");
            running.set(true);
            ImportOptions options = new ImportOptions(named(), Optional.of(cove.get().strip()).filter(id -> !id.isEmpty()), Optional.empty(),
                    stations.get());
            OpenSurvey open = desk.survey();
            open.onDisk(log -> add(open.folder(), log, there.get(), options), this::told);
        }
    }

    /** Under the lock: the log as it is then. */
    private static ImportResult add(Path folder, ReadingLog log, Path file, ImportOptions options) throws IOException {
        ReadSurvey now = SurveyFolder.at(folder).read();
        if (now.refused()) {
            return new ImportResult(0, 0, 0, List.of(), List.of(), List.of(), now.problems().stream().filter(Problem::refused).toList());
        }
        return new MeterImport(now.survey().orElseThrow(), now.log(), log, HeaderTable.ofTheTradeAnd(folder)).add(file, options);
    }

    /** Both lengths or none; empty where one is missing or no length. */
    private Optional<Stations> stations() {
        if (start.get().isBlank() && every.get().isBlank()) {
            return Optional.of(new Stations.Unsaid());
        }
        Writing writing = new Writing(texts, desk.settings());
        Optional<Typed> from = writing.metres(start.get());
        Optional<Typed> step = writing.metres(every.get()).filter(typed -> typed.value() > 0);
        return from.isEmpty() || step.isEmpty() ? Optional.empty()
                : Optional.of(new Stations.Evenly(from.get(), back.get() ? turned(step.get()) : step.get()));
    }

    private Map<String, String> named() {
        Map<String, String> named = new LinkedHashMap<>();
        for (String pair : columns.get().split("[;\\n]")) {
            int equals = pair.lastIndexOf('=');
            if (equals > 0) {
                named.put(pair.substring(0, equals).strip(), pair.substring(equals + 1).strip());
            }
        }
        return named;
    }

    private static Typed turned(Typed step) {
        return new Typed("-" + step.text(), -step.value());
    }

    private void told(Outcome<ImportResult> outcome) {
        running.set(false);
        if (outcome.refused()) {
            trouble.set(words.lines(outcome.problems()));
            return;
        }
        ImportResult result = outcome.value().orElseThrow();
        trouble.set(words.lines(Stream.of(result.refusals(), result.setAside(), result.questions(), result.warnings())
                .flatMap(List::stream).toList()));
        says.set(result.refused() && result.rows() == 0 ? texts.get("import.nothing") : texts.get("import.done",
                whole(result.rows()), whole(result.kept()), whole(result.alreadyThere()), whole(result.setAside().size())));
    }

    private String whole(int count) {
        return texts.numbers().fixed(count, 0);
    }
}
