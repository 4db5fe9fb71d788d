package covewalk.app.faults;

import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.parts.PicturePane;
import covewalk.app.parts.VerdictView;
import covewalk.app.parts.Wrapped;
import covewalk.app.text.Texts;
import covewalk.plot.Strip;
import covewalk.plot.StripFrame;
import covewalk.report.text.Explanation;
import covewalk.words.LabelRow;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One finding with all that is said about it. */
final class CardView extends VBox {

    /** How much of the strip stands around a place, m each way (common practice, no source). */
    private static final double REACH_M = 2.5;
    private static final double PIECE_MM = 110;
    private static final double PIECE_PIXELS_PER_MM = 5;
    /** A piece that shows nearly all of its cove shows nothing new. */
    private static final double MOST_OF_A_COVE = 0.4;

    private final Texts texts;

    /**
     * @param before what an earlier visit found there
     * @param punch how its item stands
     */
    CardView(Card card, Texts texts, Settings settings, Node before, Node punch, Runnable walkThere) {
        super(12);
        this.texts = texts;
        getStyleClass().add("card");
        Label title = new Wrapped(card.title(), "heading");
        title.setId("fault-title");
        Label sentence = new Wrapped(card.sentence(), "fault-sentence");
        sentence.setId("fault-sentence");
        Button walk = new Button(texts.get("walk-there"));
        walk.setId("fault-walk");
        walk.setOnAction(event -> walkThere.run());
        VerdictView verdict = new VerdictView(card.finding().verdict(), card.finding().difference(), texts.words());
        verdict.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox head = new HBox(16, verdict, title);
        head.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(head, sentence, before);
        add(null, lines(card.checkFirst(), "fault-check"));
        getChildren().add(walk);
        card.cautions().forEach(caution -> getChildren().add(caution(caution)));
        if (!card.numbers().isEmpty()) {
            add("heading.numbers", lines(card.numbers(), "fault-numbers"));
        }
        if (reachM(card) < MOST_OF_A_COVE * card.finding().cove().cove().lengthM()) {
            add("heading.piece", piece(card, settings));
        }
        if (!card.labels().isEmpty()) {
            add(card.reels().size() > 1 ? "heading.labels" : "heading.label", labels(card));
        }
        card.notes().forEach(note -> getChildren().add(new Wrapped(note, "fault-note")));
        getChildren().add(punch);
        add("heading.where", where(card.where()));
        if (!card.restsOn().isEmpty()) {
            add("heading.rests", restsOn(card.restsOn()));
        }
        if (!card.reminders().isEmpty()) {
            getChildren().add(new Wrapped(texts.words().text("caution.head"), "part-heading"));
            card.reminders().forEach(this::reminders);
        }
    }

    private void reminders(Card.Cautions cautions) {
        VBox box = new VBox(4, new Wrapped(cautions.group(), "label-head"));
        cautions.sentences().forEach(sentence -> box.getChildren().add(new Wrapped(sentence, "fault-line")));
        getChildren().add(box);
    }

    private void add(String heading, Node part) {
        if (heading != null) {
            Label label = new Wrapped(texts.get(heading), "part-heading");
            getChildren().add(label);
        }
        getChildren().add(part);
    }

    private static Label caution(String text) {
        Label label = new Wrapped("! " + text, "caution");
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    private static GridPane lines(List<Card.Line> lines, String id) {
        GridPane grid = new GridPane();
        grid.setId(id);
        grid.setHgap(16);
        grid.setVgap(6);
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(USE_PREF_SIZE);
        ColumnConstraints texts = new ColumnConstraints();
        texts.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(names, texts);
        for (int i = 0; i < lines.size(); i++) {
            Label name = new Label(lines.get(i).name());
            name.getStyleClass().add("weak");
            GridPane.setValignment(name, VPos.TOP);
            grid.addRow(i, name, new Wrapped(lines.get(i).text(), "fault-line"));
        }
        return grid;
    }

    private static double reachM(Card card) {
        return Math.max(REACH_M, (card.finding().toM() - card.finding().fromM()) / 2 + 0.5);
    }

    private PicturePane piece(Card card, Settings settings) {
        PicturePane piece = new PicturePane(PIECE_PIXELS_PER_MM);
        piece.setId("fault-piece");
        double middle = (card.finding().fromM() + card.finding().toM()) / 2;
        piece.show(Strip.of(card.finding().cove(), texts.words().lengthsIn(settings.lengths()),
                StripFrame.screen(card.finding().cove().cove(), PIECE_MM, settings.theme() == Theme.DARK)
                        .around(middle, reachM(card))));
        return piece;
    }

    private GridPane labels(Card card) {
        GridPane grid = new GridPane();
        grid.setId("fault-labels");
        grid.setHgap(16);
        grid.setVgap(4);
        grid.addRow(0, new Label(), named(card.reels().get(0)));
        boolean two = card.reels().size() > 1;
        if (two) {
            grid.add(named(card.reels().get(1)), 2, 0);
        }
        for (LabelRow row : card.labels()) {
            int at = grid.getRowCount();
            Label field = new Label(row.field());
            field.getStyleClass().add("weak");
            field.setMinWidth(USE_PREF_SIZE);
            grid.addRow(at, field, new Wrapped(row.before(), row.differs() ? "differs" : "same"));
            if (two) {
                grid.add(new Wrapped(row.after(), row.differs() ? "differs" : "same"), 2, at);
            }
        }
        return grid;
    }

    private static Label named(String reel) {
        Label label = new Wrapped(reel, "label-head");
        return label;
    }

    private static VBox where(List<String> where) {
        VBox box = new VBox(4);
        where.forEach(line -> box.getChildren().add(new Wrapped(line, "fault-line")));
        return box;
    }

    private static VBox restsOn(List<Explanation.Line> lines) {
        VBox box = new VBox(6);
        box.setId("fault-rests");
        GridPane table = null;
        for (Explanation.Line line : lines) {
            if (line.cells().size() > 1) {
                if (table == null) {
                    table = new GridPane();
                    table.setHgap(16);
                    table.setVgap(4);
                    box.getChildren().add(table);
                }
                row(table, line.cells());
            } else if (!line.cells().isEmpty()) {
                box.getChildren().add(new Wrapped(line.cells().get(0), "fault-line"));
            }
        }
        return box;
    }

    private static void row(GridPane table, List<String> cells) {
        int at = table.getRowCount();
        for (int i = 0; i < cells.size(); i++) {
            Label cell = new Wrapped(cells.get(i), "fault-line");
            GridPane.setHalignment(cell, i == 0 ? HPos.RIGHT : HPos.LEFT);
            table.add(cell, i, at);
        }
    }
}
