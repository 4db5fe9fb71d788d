package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.geometry.Dimension2D;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The colours of look.css against WCAG 2.2, level AA: 4.5 to 1 for text (1.4.3), 3 to 1 for what shows a control, its
 * state and its focus (1.4.11, 2.4.7). Contrast is (L1 + 0.05) / (L2 + 0.05), L the relative luminance defined there.
 */
class LookTest {

    private static final Path SHEET = Path.of("src/main/resources/covewalk/app/look.css");
    private static final Pattern ROLE = Pattern.compile("(-look-[a-z-]+):\\s*(#[0-9a-f]{6});");

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}: {1} on {2}, {4}")
    @CsvSource(textBlock = """
        # theme,  role,            on,            ratio, what
        dark,     -look-text,      -look-ground,  7,     text (level AAA: read in a hurry)
        dark,     -look-text,      -look-raised,  7,     text of buttons
        dark,     -look-strong,    -look-ground,  7,     what is beyond
        dark,     -look-weak,      -look-ground,  4.5,   names of things
        dark,     -look-weak,      -look-raised,  4.5,   names in what is chosen
        dark,     -look-accent,    -look-ground,  4.5,   the focus and the hue
        dark,     -look-accent,    -look-raised,  4.5,   text of what is chosen
        dark,     -look-on-accent, -look-accent,  4.5,   text of the main action
        dark,     -look-edge,      -look-ground,  3,     the edge of a control
        dark,     -look-edge,      -look-raised,  3,     the same from inside
        light,    -look-text,      -look-ground,  7,     text
        light,    -look-text,      -look-raised,  7,     text of buttons
        light,    -look-strong,    -look-ground,  7,     what is beyond
        light,    -look-weak,      -look-ground,  4.5,   names of things
        light,    -look-weak,      -look-raised,  4.5,   names in what is chosen
        light,    -look-accent,    -look-ground,  4.5,   the focus and the hue
        light,    -look-accent,    -look-raised,  4.5,   text of what is chosen
        light,    -look-on-accent, -look-accent,  4.5,   text of the main action
        light,    -look-edge,      -look-ground,  3,     the edge of a control
        light,    -look-edge,      -look-raised,  3,     the same from inside
        contrast, -look-text,      -look-ground,  15,    all that is read
        contrast, -look-weak,      -look-ground,  15,    nothing is weak here
        contrast, -look-edge,      -look-ground,  15,    nor any edge
        contrast, -look-accent,    -look-ground,  7,     the focus and the hue
        contrast, -look-on-accent, -look-accent,  7,     text of the main action
        """)
    void everyRoleStandsOutFromItsGround(String theme, String role, String on, double least, String what) throws IOException {
        Map<String, Color> roles = roles(theme);
        double ratio = contrast(roles.get(role), roles.get(on));
        assertTrue(ratio >= least, String.format(Locale.ROOT, "%s: %.2f", what, ratio));
    }

    /** Two figures of the standard's own: black on white, and the grey that just passes on white (from memory). */
    @Test
    void theContrastIsThatOfTheStandard() {
        assertEquals(21, contrast(Color.BLACK, Color.WHITE), 1e-9);
        assertEquals(4.54, contrast(Color.web("#767676"), Color.WHITE), 0.005);
    }

    @Test
    void theDarkScreenIsNowhereWhiterThanItMustBe() throws IOException {
        assertEquals(0.87, roles("dark").get("-look-text").getBrightness(), 0.005, "off-white text");
        assertTrue(roles("dark").values().stream().allMatch(colour -> colour.getBrightness() <= 1 && luminance(colour) < 0.9));
    }

    private static Map<String, Color> roles(String theme) throws IOException {
        String sheet = Files.readString(SHEET);
        Map<String, Color> roles = new TreeMap<>(block(sheet, ".shell"));
        if (!theme.equals("dark")) {
            Map<String, Color> own = block(sheet, ".shell:" + theme);
            assertEquals(roles.keySet(), own.keySet(), "every theme sets every role");
            roles.putAll(own);
        }
        return roles;
    }

    private static Map<String, Color> block(String sheet, String selector) {
        int from = sheet.indexOf("\n" + selector + " {");
        Matcher matcher = ROLE.matcher(sheet.substring(from, sheet.indexOf('}', from)));
        Map<String, Color> roles = new TreeMap<>();
        while (matcher.find()) {
            roles.put(matcher.group(1), Color.web(matcher.group(2)));
        }
        return roles;
    }

    private static double contrast(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed()) + 0.7152 * linear(colour.getGreen()) + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double level) {
        return level <= 0.04045 ? level / 12.92 : Math.pow((level + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void noStyleIsMissedOrMisspelt(Theme theme) {
        List<String> warnings = new CopyOnWriteArrayList<>();
        Handler handler = new Warnings(warnings);
        List<Logger> loggers = List.of(Logger.getLogger("javafx.css"), Logger.getLogger("javafx.scene"), Logger.getLogger("javafx"));
        loggers.forEach(logger -> logger.addHandler(handler));
        try (Screens screens = Screens.open(new Settings(theme, 100, Locale.ENGLISH, false, false), new Dimension2D(1024, 600))
                .survey(Screens.demo(folder))) {
            for (Place place : Place.values()) {
                screens.interact(() -> screens.desk().go(place));
                screens.rest();
            }
        } finally {
            loggers.forEach(logger -> logger.removeHandler(handler));
        }
        assertEquals(List.of(), warnings);
    }

    /** Keeps warnings of styles and scenes; that JavaFX lies in ordinary jars is no news. */
    private static final class Warnings extends Handler {

        private final List<String> kept;

        Warnings(List<String> kept) {
            this.kept = kept;
        }

        @Override
        public void publish(LogRecord record) {
            String message = String.valueOf(record.getMessage());
            if (record.getLevel().intValue() >= Level.WARNING.intValue() && !message.startsWith("Unsupported JavaFX configuration")
                    && !kept.contains(message)) {
                kept.add(message);
            }
        }

        @Override
        public void flush() {
            // nothing is held back
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
