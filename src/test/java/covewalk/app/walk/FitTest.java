package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {

    /** Widths and heights are those beside, or above, the six places. */
    @ParameterizedTest(name = "{6}")
    @CsvSource(textBlock = """
        # width, height, text, tall,  low,   textPx, why
        919,     600,    100,  false, false, 15.0,   the smallest tablet at the usual size
        1817,    1080,   100,  false, false, 27.0,   a large screen is used
        859,     600,    150,  false, true,  16.9,   larger text as far as it fits beside a low strip
        873,     600,    200,  false, true,  16.9,   and no larger: all that is typed and said stays in sight
        800,     1213,   100,  true,  false, 16.0,   a tablet upright
        600,     950,    200,  true,  true,  16.7,   a small one upright
        480,     700,    100,  true,  true,  12.3,   a small window: smaller rather than cut off
        587,     390,    100,  false, true,  11.0,   no smaller than can be read
        410,     400,    100,  true,  true,  11.0,   too narrow for fields beside the pad
        """)
    void isAsLargeAsThereIsRoomFor(double width, double height, int text, boolean tall, boolean low, double textPx, String why) {
        Fit fit = Fit.of(width, height, text);
        assertEquals(tall, fit.tall());
        assertEquals(low, fit.low());
        assertEquals(textPx, fit.textPx(), 0.05);
    }

    /** 15 mm at 96 dpi are 57 px; four of them in a row. */
    @ParameterizedTest
    @CsvSource({"919, 600, 100", "859, 600, 200", "800, 1213, 80", "3700, 2160, 100"})
    void theKeysFitAGlove(double width, double height, int text) {
        Fit fit = Fit.of(width, height, text);
        assertTrue(fit.padWidth() >= 4 * 57, fit.toString());
        assertTrue(fit.padHeight() >= 4 * 57, fit.toString());
    }
}
