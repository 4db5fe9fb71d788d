package covewalk.app.faults;

import covewalk.app.text.Texts;
import covewalk.survey.file.punch.PunchColumn;
import java.util.List;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How an item of the punch list stands, to be typed; Enter records it. Takes no room where there is no item. */
final class PunchView extends VBox {

    private static final List<PunchColumn> WITH_TODAY = List.of(PunchColumn.DONE, PunchColumn.REINSPECTED, PunchColumn.ACCEPTED);

    private final PunchModel model;
    private final Texts texts;

    PunchView(PunchModel model, Texts texts) {
        super(8);
        this.model = model;
        this.texts = texts;
        setId("punch");
        Label title = new Label();
        title.setId("punch-title");
        title.getStyleClass().add("part-heading");
        title.textProperty().bind(model.titleProperty());
        Button record = new Button(texts.get("punch.record"));
        record.setId("punch-record");
        record.setOnAction(event -> model.record());
        Label status = says("punch-status", model.statusProperty());
        Label unread = says("punch-unread", model.unreadProperty());
        VBox typed = new VBox(8, title, fields(), record);
        typed.managedProperty().bind(model.itemProperty().isNotNull());
        typed.visibleProperty().bind(typed.managedProperty());
        getChildren().addAll(unread, typed, status);
    }

    private static Label says(String id, ReadOnlyStringProperty text) {
        Label says = new Label();
        says.setId(id);
        says.setWrapText(true);
        says.setMinHeight(USE_PREF_SIZE);
        says.textProperty().bind(text);
        says.managedProperty().bind(text.isNotEmpty());
        return says;
    }

    private GridPane fields() {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(6);
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(USE_PREF_SIZE);
        ColumnConstraints typed = new ColumnConstraints();
        typed.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(names, typed);
        for (PunchColumn column : PunchColumn.STATE) {
            int row = grid.getRowCount();
            TextField field = field(column);
            Label name = new Label(texts.get("punch.column." + column.code()));
            name.getStyleClass().add("weak");
            name.setLabelFor(field);
            grid.addRow(row, name, field);
            if (WITH_TODAY.contains(column)) {
                grid.add(today(column, field), 2, row);
            }
        }
        return grid;
    }

    private TextField field(PunchColumn column) {
        TextField field = new TextField();
        field.setId("punch-" + column.code());
        field.setPromptText(texts.get("punch.prompt." + column.code()));
        field.setMinWidth(80);
        field.textProperty().bindBidirectional(model.typed(column));
        field.setOnAction(event -> model.record());
        return field;
    }

    private Button today(PunchColumn column, TextField field) {
        Button today = new Button(texts.get("punch.today"));
        today.setId("punch-today-" + column.code());
        today.setAccessibleText(texts.get("punch.today.says", texts.get("punch.column." + column.code())));
        today.setMinWidth(USE_PREF_SIZE);
        today.setOnAction(event -> {
            model.today(column);
            field.requestFocus();
            field.end();
        });
        return today;
    }
}
