package covewalk.app;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.text.Texts;
import java.util.Locale;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/** The places to go, each a word with a small drawing. */
final class Navigation extends StackPane {

    private final Desk desk;
    private final ToggleButton[] buttons = new ToggleButton[Place.values().length];

    Navigation(Desk desk, Texts texts) {
        this.desk = desk;
        getStyleClass().add("places");
        for (Place place : Place.values()) {
            buttons[place.ordinal()] = button(place, texts);
        }
        desk.placeProperty().addListener((property, before, now) -> mark());
        desk.surveyProperty().addListener((property, before, now) -> mark());
        mark();
    }

    private ToggleButton button(Place place, Texts texts) {
        SVGPath drawing = new SVGPath();
        drawing.setContent(PlaceDrawing.of(place));
        drawing.getStyleClass().add("place-drawing");
        ToggleButton button = new ToggleButton(texts.get("place." + place.code()), new StackPane(drawing));
        button.setId("place-" + place.code());
        button.setContentDisplay(ContentDisplay.TOP);
        button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        button.getStyleClass().add("place");
        button.setTooltip(new Tooltip(texts.get("place.keys", Integer.toString(place.ordinal() + 1))));
        button.setOnAction(event -> {
            desk.go(place);
            mark();
        });
        return button;
    }

    private void mark() {
        for (Place place : Place.values()) {
            ToggleButton button = buttons[place.ordinal()];
            button.setSelected(place == desk.placeProperty().get());
            button.setDisable(place.needsSurvey() && desk.survey() == null);
        }
    }

    /** Its words grow with the text only as far as all six find room beside, or below, what they lead to. */
    void turn(Orientation orientation, double textPx) {
        setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", textPx));
        if (orientation == Orientation.VERTICAL) {
            VBox column = new VBox(4, buttons);
            column.setAlignment(Pos.TOP_CENTER);
            getChildren().setAll(column);
        } else {
            HBox row = new HBox(4, buttons);
            for (ToggleButton button : buttons) {
                HBox.setHgrow(button, Priority.ALWAYS);
            }
            getChildren().setAll(row);
        }
    }
}
