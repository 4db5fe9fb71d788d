package covewalk.app.parts;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.shape.SVGPath;

/**
 * A number pad in the page, for gloves: the system's own may not come, and would cover what is typed. Its keys leave the
 * focus where it is.
 */
public final class NumberPad extends GridPane {

    /** What its keys do. */
    public interface Keys {
        /** @param text a digit or the decimal mark */
        void type(String text);

        void turnSign();

        void back();

        /** To the next field. */
        void next();

        void enter();
    }

    /** What stands on the keys, or is said of them. */
    public record Says(String mark, String back, String sign, String next, String enter, String enterInFull) {
    }

    private static final String BACK = "M8 5H22V19H8L2 12Z M11 8.4L17.6 15.6M17.6 8.4L11 15.6";
    private static final String NEXT = "M3 12H19M13 6L19 12L13 18M22 5V19";
    private static final String ENTER = "M21 4V13H5M11 7L5 13L11 19";
    private static final int SIDE = 4;

    private final Keys keys;

    public NumberPad(Keys keys, Says says) {
        this.keys = keys;
        getStyleClass().add("number-pad");
        String[] digits = {"7", "8", "9", "4", "5", "6", "1", "2", "3", "0"};
        for (int i = 0; i < digits.length; i++) {
            String digit = digits[i];
            add(key("pad-" + digit, digit, digit, on -> on.type(digit)), i % 3, i / 3);
        }
        add(key("pad-mark", says.mark(), says.mark(), on -> on.type(says.mark())), 1, 3);
        add(drawn(key("pad-next", "", says.next(), Keys::next), NEXT), 2, 3);
        add(drawn(key("pad-back", "", says.back(), Keys::back), BACK), 3, 0);
        add(key("pad-sign", "+/\u2212", says.sign(), Keys::turnSign), 3, 1);
        Button enter = key("pad-enter", says.enter(), says.enterInFull(), Keys::enter);
        enter.getStyleClass().add("main-action");
        drawn(enter, ENTER);
        enter.setContentDisplay(ContentDisplay.TOP);
        add(enter, 3, 2, 1, 2);
        for (int i = 0; i < SIDE; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / SIDE);
            getColumnConstraints().add(column);
            RowConstraints row = new RowConstraints();
            row.setPercentHeight(100.0 / SIDE);
            row.setVgrow(Priority.ALWAYS);
            getRowConstraints().add(row);
        }
    }

    private Button key(String id, String text, String says, Consumer<Keys> press) {
        Button key = new Button(text);
        key.setId(id);
        key.setAccessibleText(says);
        key.setFocusTraversable(false);
        key.getStyleClass().add("pad-key");
        key.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        key.setOnAction(event -> press.accept(keys));
        return key;
    }

    private static Node drawn(Button key, String drawing) {
        SVGPath path = new SVGPath();
        path.setContent(drawing);
        path.getStyleClass().add("pad-drawing");
        key.setGraphic(path);
        return key;
    }
}
