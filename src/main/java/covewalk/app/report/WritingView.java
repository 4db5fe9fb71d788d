package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.forms.Says;
import covewalk.app.parts.Wrapped;
import covewalk.app.text.Texts;
import covewalk.report.page.Paper;
import covewalk.report.Readership.Reader;
import covewalk.words.Language;
import covewalk.words.LengthUnit;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.property.Property;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;

/** How and where the report is written, and what was written. */
final class WritingView extends VBox {

    /** What is signed comes first. */
    private static final List<String> KINDS = List.of("pdf", "html", "csv", "json");

    private final Desk desk;
    private final ReportModel model;
    private final Texts texts;
    private final Button write = new Button();
    private final TextField folder = new TextField();
    private final VBox issued = new VBox(8);

    WritingView(Desk desk, ReportModel model, Texts texts) {
        super(8);
        this.desk = desk;
        this.model = model;
        this.texts = texts;
        getStyleClass().add("report-side");
        Label heading = new Label(texts.get("write"));
        heading.getStyleClass().add("heading");
        FlowPane page = new FlowPane(20, 8, choice(new HBox(4), "language", "language.", List.of(Language.values()), Language::code, model.languageProperty()),
                choice(new HBox(4), "paper", "paper.", List.of(Paper.values()), Paper::code, model.paperProperty()),
                choice(new HBox(4), "lengths", "lengths.", List.of(LengthUnit.values()), LengthUnit::code, model.lengthsProperty()));
        getChildren().addAll(heading, forWhom(), page, place(), writing(), new Says("report-why-not", "report-line", model.whyNotProperty()),
                new Says("report-status", "report-line", model.statusProperty()), issued);
        model.issuedProperty().addListener((property, before, now) -> show(now));
        show(model.issuedProperty().get());
    }

    void focus() {
        if (write.isDisabled()) {
            folder.requestFocus();
        } else {
            write.requestFocus();
        }
    }

    double em() {
        return write.getFont().getSize();
    }

    /**
     * One of a few, all of them in sight.
     *
     * @param buttons where they stand
     * @param start of the keys of their texts
     */
    private <T> Node choice(Pane buttons, String name, String start, List<T> values, Function<T, String> code, Property<T> chosen) {
        ToggleGroup group = new ToggleGroup();
        for (T value : values) {
            ToggleButton button = new ToggleButton(texts.get(start + code.apply(value)));
            button.setId("report-" + name + "-" + code.apply(value));
            button.setToggleGroup(group);
            button.setSelected(value.equals(chosen.getValue()));
            button.setOnAction(event -> {
                chosen.setValue(value);
                button.setSelected(true);
            });
            buttons.getChildren().add(button);
        }
        Label label = new Label(texts.get(name));
        label.getStyleClass().add("weak");
        return new VBox(2, label, buttons);
    }

    private Node forWhom() {
        Node readers = choice(new FlowPane(4, 4), "for", "for.", List.of(Reader.values()), Reader::code, model.forWhom().readerProperty());
        Label says = new Wrapped("");
        says.getStyleClass().add("small");
        says.textProperty().bind(Bindings.createStringBinding(() -> texts.get("for." + model.forWhom().readerProperty().get().code() + ".says"),
                model.forWhom().readerProperty()));
        return new VBox(4, readers, says, new ReelView(model.forWhom(), texts));
    }

    private Node place() {
        folder.setId("report-folder");
        folder.textProperty().bindBidirectional(model.folderProperty());
        folder.setOnAction(event -> model.write());
        HBox.setHgrow(folder, Priority.ALWAYS);
        Label label = new Label(texts.get("folder"));
        label.getStyleClass().add("weak");
        label.setLabelFor(folder);
        Button browse = new Button(texts.get("folder.browse"));
        browse.setId("report-browse");
        browse.setMinWidth(USE_PREF_SIZE);
        browse.setOnAction(event -> browse());
        return new VBox(2, label, new HBox(8, folder, browse));
    }

    private void browse() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(texts.get("folder"));
        Path parent = desk.survey().folder().toAbsolutePath().getParent();
        if (parent != null && Files.isDirectory(parent)) {
            chooser.setInitialDirectory(parent.toFile());
        }
        File chosen = chooser.showDialog(getScene().getWindow());
        if (chosen != null) {
            model.folderProperty().set(chosen.getPath());
        }
    }

    private Node writing() {
        write.setText(texts.get("write.now"));
        write.setId("report-write");
        write.getStyleClass().add("main-action");
        write.setMinWidth(USE_PREF_SIZE);
        write.disableProperty().bind(model.whyNotProperty().isNotEmpty().or(model.runningProperty()));
        write.setOnAction(event -> model.write());
        Button stop = new Button(texts.get("write.stop"));
        stop.setId("report-stop");
        stop.setMinWidth(USE_PREF_SIZE);
        stop.disableProperty().bind(model.stoppableProperty().not());
        stop.setOnAction(event -> model.stop());
        ProgressBar progress = new ProgressBar();
        progress.setAccessibleText(texts.get("write.running"));
        progress.visibleProperty().bind(model.runningProperty());
        progress.progressProperty().bind(model.doneProperty());
        FlowPane row = new FlowPane(8, 8, write, stop, progress);
        row.setRowValignment(VPos.CENTER);
        return row;
    }

    private void show(Issued report) {
        issued.getChildren().clear();
        if (report == null) {
            return;
        }
        if (!report.files().isEmpty()) {
            Label head = new Label(texts.get("written"));
            head.getStyleClass().add("part-heading");
            issued.getChildren().add(head);
        }
        report.files().stream().sorted(Comparator.comparingInt(file -> KINDS.indexOf(end(file))))
                .forEach(file -> issued.getChildren().add(file(file)));
        report.toKnow().forEach(sentence -> issued.getChildren().add(new Wrapped(sentence)));
        if (!report.seal().isEmpty()) {
            TextField seal = new TextField(report.seal());
            seal.setId("report-seal");
            seal.setEditable(false);
            Label label = new Wrapped(texts.get(report.files().isEmpty() ? "seal.alone" : "seal"));
            label.setLabelFor(seal);
            issued.getChildren().addAll(label, seal);
        }
    }

    private Node file(Path file) {
        String name = String.valueOf(file.getFileName());
        Button open = new Button(texts.get("open"));
        open.setId("report-open-" + name.toLowerCase(Locale.ROOT).replace('.', '-'));
        open.setAccessibleText(texts.get("open.file", name));
        open.setOnAction(event -> desk.showFile(file));
        Label label = new Label(name + kind(file));
        label.setMinWidth(0);
        HBox row = new HBox(12, open, label);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private String kind(Path file) {
        return KINDS.contains(end(file)) ? ", " + texts.get("file." + end(file)) : "";
    }

    private static String end(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
