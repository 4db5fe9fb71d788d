package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.text.Texts;
import javafx.application.Platform;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** What will be in the report at the left, how and where it is written at the right; one below the other where it is narrow. */
final class ReportView extends GridPane {

    private static final double TWO_COLUMNS_EM = 52;

    private final ScrollPane contents;
    private final ScrollPane writing;
    private final WritingView write;
    private boolean two;

    ReportView(Desk desk, ReportModel model) {
        Texts texts = desk.texts(ReportView.class);
        getStyleClass().addAll("page", "report");
        setHgap(24);
        setVgap(16);
        write = new WritingView(desk, model, texts);
        CheckSeals seals = new CheckSeals(desk);
        SealsView check = new SealsView(seals, texts);
        check.getStyleClass().add("report-side");
        contents = scrolled(new VBox(new ContentsView(desk, model, texts), check));
        writing = scrolled(write);
        model.issuedProperty().addListener((property, before, now) -> {
            seals.forget();
            if (now != null) {
                Platform.runLater(() -> writing.setVvalue(writing.getVmax())); // once it is laid out: what was written stands last
            }
        });
        arrange(true);
        widthProperty().addListener((property, before, now) -> {
            boolean wide = now.doubleValue() > TWO_COLUMNS_EM * write.em();
            if (wide != two) {
                arrange(wide);
            }
        });
    }

    void focusWrite() {
        write.focus();
    }

    private static ScrollPane scrolled(VBox content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.getStyleClass().add("plain-scroll");
        pane.setMinSize(0, 0);
        return pane;
    }

    private void arrange(boolean wide) {
        two = wide;
        getChildren().setAll();
        getColumnConstraints().clear();
        getRowConstraints().clear();
        int columns = wide ? 2 : 1;
        for (int i = 0; i < columns; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / columns);
            getColumnConstraints().add(column);
        }
        for (int i = 0; i < 3 - columns; i++) {
            RowConstraints row = new RowConstraints();
            row.setPercentHeight(100.0 / (3 - columns));
            getRowConstraints().add(row);
        }
        add(contents, 0, 0);
        add(writing, wide ? 1 : 0, wide ? 0 : 1);
    }
}
