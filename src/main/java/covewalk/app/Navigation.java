package covewalk.app;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.text.Texts;
import java.util.Locale;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/** The places to go, each a word with a small drawing. */
final class Navigation extends StackPane {

    /** The six places, in sizes of their text: above each other, with their drawings beside the words, and side by side. */
    private static final double HIGH = 27;
    private static final double FLAT = 20.5;
    private static final double WIDE = 37;
    private static final PseudoClass FLAT_PLACES = PseudoClass.getPseudoClass("flat");

    private final Desk desk;
    private final ScrollPane scroll = new ScrollPane();
    private Orientation orientation;
    private final ToggleButton[] buttons = new ToggleButton[Place.values().length];

    Navigation(Desk desk, Texts texts) {
        this.desk = desk;
        getStyleClass().add("places");
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollBarPolicy.NEVER);
        scroll.setMinSize(0, 0);
        setMinHeight(0);
        getChildren().add(scroll);
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

    /**
     * Its words grow with the text only as far as all six find room beside, or below, what they lead to. Where they do not, the
     * drawings stand beside the words; where even that is too high, they scroll.
     *
     * @param room the height for places above each other, the width for places side by side, in px
     */
    void turn(Orientation now, double room, double chosenPx) {
        boolean column = now == Orientation.VERTICAL;
        boolean flat = column && room > 0 && room < HIGH * TextSize.LEAST_PX;
        double textPx = TextSize.atMost(room / (column ? flat ? FLAT : HIGH : WIDE), chosenPx);
        setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", textPx));
        pseudoClassStateChanged(FLAT_PLACES, flat);
        for (ToggleButton button : buttons) {
            button.setContentDisplay(flat ? ContentDisplay.LEFT : ContentDisplay.TOP);
        }
        scroll.setVbarPolicy(flat && room < FLAT * TextSize.LEAST_PX ? ScrollBarPolicy.ALWAYS : ScrollBarPolicy.NEVER);
        if (now != orientation) {
            orientation = now;
            scroll.setContent(column ? column() : row());
        }
    }

    private VBox column() {
        VBox column = new VBox(4, buttons);
        column.setAlignment(Pos.TOP_CENTER);
        return column;
    }

    private HBox row() {
        HBox row = new HBox(4, buttons);
        for (ToggleButton button : buttons) {
            HBox.setHgrow(button, Priority.ALWAYS);
        }
        return row;
    }
}
