package covewalk.app.parts;

import covewalk.plot.Paint;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.value.ObservableValue;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** The colours that the style sheet gives to the inks of a picture: {@code -ink-strong} and its like. */
final class Inks {

    private static final StyleablePropertyFactory<PicturePane> FACTORY =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());

    private final Map<Paint.Ink, StyleableProperty<Color>> colours = new EnumMap<>(Paint.Ink.class);

    Inks(PicturePane owner) {
        for (Paint.Ink ink : Paint.Ink.values()) {
            String name = ink.name().toLowerCase(Locale.ROOT);
            colours.put(ink, FACTORY.createStyleableColorProperty(owner, "ink" + name, "-ink-" + name,
                    pane -> pane.inks().colours.get(ink), ink == Paint.Ink.NONE ? Color.TRANSPARENT : Color.GRAY));
        }
    }

    static List<CssMetaData<? extends Styleable, ?>> cssMetaData() {
        return FACTORY.getCssMetaData();
    }

    void changed(Runnable listener) {
        colours.values().forEach(colour -> ((ObservableValue<?>) colour).addListener((property, before, now) -> listener.run()));
    }

    Color colour(Paint paint) {
        if (paint instanceof Paint.Rgb rgb) {
            return Color.rgb(rgb.red(), rgb.green(), rgb.blue());
        }
        return colours.get((Paint.Ink) paint).getValue();
    }
}
