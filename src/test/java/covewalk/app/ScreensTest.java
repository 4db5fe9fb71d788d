package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Dimension2D;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Pictures of every place with the demonstration survey, to be looked at: target/screens. */
class ScreensTest {

    private static final Dimension2D SMALL = new Dimension2D(1024, 600);
    private static final List<Dimension2D> SIZES = List.of(SMALL, new Dimension2D(1920, 1080), new Dimension2D(800, 1280));

    @TempDir
    Path folder;

    static Stream<Arguments> looks() {
        Stream<Arguments> usual = Arrays.stream(Theme.values()).flatMap(theme -> SIZES.stream().map(size ->
                Arguments.of(size, new Settings(theme, 100, Locale.ENGLISH, false, false))));
        return Stream.concat(usual, Stream.of(
                Arguments.of(SMALL, new Settings(Theme.DARK, Settings.LARGEST, Locale.ENGLISH, false, false)),
                Arguments.of(SMALL, new Settings(Theme.DARK, 100, Locale.GERMAN, true, false))));
    }

    @ParameterizedTest
    @MethodSource("looks")
    void everyPlaceIsDrawnInEveryLook(Dimension2D size, Settings settings) throws IOException {
        try (Screens screens = Screens.open(settings, size).survey(Screens.demo(folder))) {
            for (Place place : Place.values()) {
                screens.interact(() -> screens.desk().go(place));
                Path picture = screens.picture(String.format(Locale.ROOT, "%s-%.0fx%.0f-%s-%d-%s", place.code(), size.getWidth(),
                        size.getHeight(), settings.theme().code(), settings.textPercent(), settings.language()));
                assertTrue(Files.size(picture) > 1000, "something is drawn at " + place);
            }
        }
    }
}
