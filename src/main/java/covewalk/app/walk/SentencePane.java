package covewalk.app.walk;

import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.plot.VerdictMark;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.Font;

/** What is said of a station and the one before it, in the largest type, with the mark of its verdict. */
final class SentencePane extends HBox {

    /** Of the mark, in sizes of the sentence's letters. */
    private static final double MARK = 1.7;

    private final Texts texts;
    private final PicturePane mark = new PicturePane();
    private final Label says = new Label();

    SentencePane(WalkModel model, Texts texts) {
        super(16);
        this.texts = texts;
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("walk-sentence");
        says.setId("walk-sentence");
        says.setWrapText(true);
        says.setMaxWidth(Double.MAX_VALUE);
        says.setMinHeight(USE_PREF_SIZE);
        setFillHeight(false);
        says.setAccessibleRole(AccessibleRole.TEXT);
        HBox.setHgrow(says, Priority.ALWAYS);
        getChildren().addAll(mark, says);
        model.says().neighbour().addListener((property, before, now) -> show(now));
        says.fontProperty().addListener((property, before, now) -> resize(now));
        show(model.says().neighbour().get());
    }

    private void resize(Font font) {
        mark.setMinWidth(MARK * font.getSize());
        mark.setMaxWidth(MARK * font.getSize());
    }

    private void show(Neighbour neighbour) {
        says.setText(neighbour.says());
        setManaged(!neighbour.says().isEmpty());
        boolean judged = neighbour.difference().isPresent();
        mark.setVisible(judged);
        mark.setManaged(judged);
        if (judged) {
            mark.show(VerdictMark.of(neighbour.verdict(), neighbour.difference()).picture(texts.words()));
            resize(says.getFont());
        }
    }
}
