package covewalk.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.plot.Paint.Ink;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTest {

    @Test
    void writesEveryShapeWithWhatItSays() {
        String svg = Svg.of(new Picture(20, 10, "all four", List.of(
                new Shape.Line(0, 1, 20, 1, 0.25, Ink.WEAK, "a line"),
                new Shape.Rectangle(1, 2, 3, 4, Ink.STRONG, Ink.NONE, "a box"),
                new Shape.Path(List.of(new Shape.Point(0, 0), new Shape.Point(1, 1.5)), false, 0.5, Ink.ACCENT, "a path"),
                new Shape.Text(5, 5, 3, Shape.Anchor.MIDDLE, "a word", Ink.STRONG))));
        assertTrue(svg.contains("viewBox=\"0 0 20 10\"><title>all four</title>"), svg);
        assertTrue(svg.contains("<title>a line</title></line>") && svg.contains("<title>a box</title></rect>"), svg);
        assertTrue(svg.contains("d=\"M0 0 L1 1.5\" fill=\"none\"") && svg.contains(">a word</text>"), svg);
    }

    @Test
    void leavesNoMarkupInTexts() {
        String svg = Svg.of(new Picture(20, 10, "<script>\"&'", List.of(
                new Shape.Text(0, 0, 3, Shape.Anchor.START, "</text><script>alert(1)</script>\u0000\u000B", Ink.STRONG))));
        assertFalse(svg.contains("<script") || svg.indexOf(0) >= 0 || svg.indexOf(0x0B) >= 0, svg);
        assertTrue(svg.contains("&lt;script&gt;&#34;&amp;'"), svg);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(textBlock = """
        # mm,         written,     why
        5,            5,           no idle decimals
        0.005,        0,           rounds half to even
        -0.001,       0,           zero has no sign
        12345678.9,   12345678.9,  never an exponent
        0.126,        0.13,        a hundredth of a millimetre
        """)
    void writesPlainNumbers(double mm, String written, String why) {
        assertEquals(written, Svg.number(mm), why);
    }
}
