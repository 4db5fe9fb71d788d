package covewalk.app.faults;

import covewalk.app.parts.PicturePane;
import covewalk.app.strip.Finding;
import covewalk.app.strip.FindingWords;
import covewalk.app.text.Texts;
import covewalk.plot.VerdictMark;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Words;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One finding in the list: its mark and word, where it is, how far apart. */
final class FaultCell extends ListCell<Finding> {

    private static final PseudoClass BEYOND = PseudoClass.getPseudoClass("beyond");
    private static final double MARK_PIXELS_PER_MM = 3.6;

    private final Words words;
    private final Supplier<FindingWords> inWords;
    private final PicturePane mark = new PicturePane(MARK_PIXELS_PER_MM);
    private final Label verdict = new Label();
    private final Label place = new Label();
    private final Label reels = new Label();
    private final Label steps = new Label();
    private final HBox row;

    FaultCell(Texts texts, Supplier<FindingWords> inWords) {
        this.words = texts.words();
        this.inWords = inWords;
        getStyleClass().add("fault");
        mark.setMinWidth(9 * MARK_PIXELS_PER_MM);
        verdict.getStyleClass().add("fault-verdict");
        place.getStyleClass().add("fault-place");
        reels.getStyleClass().add("small");
        steps.getStyleClass().add("fault-steps");
        steps.setMinWidth(USE_PREF_SIZE);
        VBox what = new VBox(2, place, reels);
        HBox.setHgrow(what, Priority.ALWAYS);
        what.setMinWidth(0);
        VBox found = new VBox(2, mark, verdict);
        found.setAlignment(Pos.CENTER_LEFT);
        found.getStyleClass().add("fault-found");
        row = new HBox(8, found, what, steps);
        row.setAlignment(Pos.CENTER_LEFT);
        setPrefWidth(0); // as wide as the list, never wider
    }

    @Override
    protected void updateItem(Finding finding, boolean empty) {
        super.updateItem(finding, empty);
        setGraphic(empty || finding == null ? null : row);
        if (!empty && finding != null) {
            FindingWords findings = inWords.get();
            pseudoClassStateChanged(BEYOND, finding.verdict() == Verdict.BEYOND);
            mark.show(VerdictMark.of(finding.verdict(), finding.difference()).picture(words));
            verdict.setText(words.verdict(finding.verdict()));
            place.setText(finding.cove().cove().id() + ", " + findings.lengths().of(finding.positionM()));
            reels.setText(words.kind(finding.kind()) + " \u00b7 " + findings.reels(finding));
            steps.setText(finding.difference().map(difference -> words.numbers().fixed(difference.steps(), 1)).orElse("\u2013"));
            setAccessibleText(finding.cove().cove().id() + ", " + findings.inOneLine(finding));
        }
    }
}
