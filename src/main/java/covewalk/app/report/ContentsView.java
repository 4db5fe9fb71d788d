package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.parts.VerdictView;
import covewalk.app.parts.Wrapped;
import covewalk.app.strip.DriftView;
import covewalk.app.text.Texts;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** What the report will say: how many places have each verdict, what is missing, what weakens it, who signs. */
final class ContentsView extends VBox {

    private final Desk desk;
    private final Texts texts;
    private final DriftView drift;

    ContentsView(Desk desk, ReportModel model, Texts texts) {
        super(8);
        this.desk = desk;
        this.texts = texts;
        this.drift = new DriftView(desk);
        getStyleClass().add("report-side");
        setId("report-contents");
        model.contentsProperty().addListener((property, before, now) -> show(now));
        show(model.contentsProperty().get());
    }

    private void show(Contents contents) {
        getChildren().setAll(new Wrapped(texts.get("contents"), "heading"));
        if (contents == null) {
            getChildren().add(new Wrapped(texts.get("why-not.judging"), "report-line"));
            return;
        }
        getChildren().add(counts(contents));
        getChildren().add(drift);
        missing(contents.notWalked());
        getChildren().add(new Wrapped(texts.get("signs"), "part-heading"));
        getChildren().add(new Wrapped(contents.inspector().map(name -> texts.get("signs.inspector", name))
                .orElseGet(() -> texts.get("signs.nobody")), "report-line"));
        getChildren().add(new Wrapped(texts.get("signs.limit", contents.setBy()), "report-line"));
        getChildren().add(new Wrapped(texts.get("signs.by-hand"), "report-line"));
        getChildren().add(to(Place.SITE, "signs.change", "report-to-site"));
        getChildren().add(new Wrapped(texts.get("weak"), "part-heading"));
        List<String> weak = contents.weak().isEmpty() ? List.of(texts.get("weak.nothing")) : contents.weak();
        weak.forEach(sentence -> getChildren().add(new Wrapped(sentence, "report-remark")));
    }

    private Node counts(Contents contents) {
        GridPane grid = new GridPane();
        grid.setId("report-counts");
        grid.setHgap(16);
        grid.setVgap(4);
        contents.counts().forEach((verdict, count) -> {
            Label number = new Label(texts.numbers().fixed(count, 0));
            number.getStyleClass().add("count");
            GridPane.setHalignment(number, HPos.RIGHT);
            grid.addRow(grid.getRowCount(), number, new VerdictView(verdict, Optional.empty(), texts.words()));
        });
        return grid;
    }

    private void missing(List<String> notWalked) {
        if (!notWalked.isEmpty()) {
            Label label = new Wrapped(texts.get("not-walked", String.join(", ", notWalked)), "report-line");
            label.setId("report-not-walked");
            getChildren().addAll(label, to(Place.WALK, "not-walked.go", "report-to-walk"));
        }
    }

    private Button to(Place place, String key, String id) {
        Button button = new Button(texts.get(key));
        button.setId(id);
        button.setOnAction(event -> desk.go(place));
        return button;
    }
}
