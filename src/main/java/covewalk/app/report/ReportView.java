package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.text.Texts;
import javafx.application.Platform;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** What will be in the report at the left, how and where it is written at the right; one below the other where it is narrow. */
final class ReportView extends BorderPane {

    private static final double TWO_COLUMNS_EM = 52;

    private final VBox contents;
    private final WritingView write;
    private final CheckSeals seals;
    private ScrollPane last = new ScrollPane();
    private boolean two;

    ReportView(Desk desk, ReportModel model) {
        Texts texts = desk.texts(ReportView.class);
        getStyleClass().addAll("page", "report");
        write = new WritingView(desk, model, texts);
        seals = new CheckSeals(desk);
        SealsView check = new SealsView(seals, texts);
        check.getStyleClass().add("report-side");
        contents = new VBox(new ContentsView(desk, model, texts), check);
        model.issuedProperty().addListener((property, before, now) -> issued(now));
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

    private void issued(Issued now) {
        seals.forget();
        if (now != null) {
            Platform.runLater(() -> last.setVvalue(last.getVmax())); // once it is laid out: what was written stands last
        }
    }

    private static ScrollPane scrolled(Region content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.getStyleClass().add("plain-scroll");
        pane.setMinSize(0, 0);
        return pane;
    }

    /** Where there is little room, all of it scrolls as one page: two small windows onto it would show nothing whole. */
    private void arrange(boolean wide) {
        two = wide;
        setCenter(null); // they must have left one place before they can take the other
        if (wide) {
            last = scrolled(write);
            GridPane columns = new GridPane();
            columns.setHgap(24);
            columns.getColumnConstraints().addAll(half(), half());
            columns.getRowConstraints().add(all());
            columns.addRow(0, scrolled(contents), last);
            setCenter(columns);
        } else {
            last = scrolled(new VBox(16, contents, write));
            setCenter(last);
        }
    }

    private static ColumnConstraints half() {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(50);
        return column;
    }

    private static RowConstraints all() {
        RowConstraints row = new RowConstraints();
        row.setPercentHeight(100);
        return row;
    }
}
