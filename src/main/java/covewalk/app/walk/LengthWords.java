package covewalk.app.walk;

import covewalk.app.text.Texts;
import java.util.function.BooleanSupplier;

/** Lengths as the settings want them: "6.5 m", or feet and inches. */
record LengthWords(Texts texts, BooleanSupplier feet) {

    String of(double m) {
        return feet.getAsBoolean() ? texts.numbers().feetInches(m) : texts.numbers().plain(m, 2) + " m";
    }
}
