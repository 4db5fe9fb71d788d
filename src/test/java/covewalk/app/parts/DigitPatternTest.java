package covewalk.app.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitPatternTest {

    private static DigitPattern pattern(String kind) {
        return switch (kind) {
            case "x" -> DigitPattern.fraction(4);
            case "duv" -> DigitPattern.smallSigned(4);
            case "cct" -> DigitPattern.whole(4);
            default -> DigitPattern.whole(0);
        };
    }

    @ParameterizedTest(name = "{4}")
    @CsvSource(nullValues = "refused", textBlock = """
        # kind, was,     proposed,    now,     why
        x,     '0.',     0.4,         0.4,     the first digit behind what is there
        x,     '0.458',  0.4580,      0.4580,  the last digit
        x,     '0.',     '0.,',       '0.',    a comma typed once more changes nothing
        x,     '0.',     '0..',       '0.',    nor does a point
        x,     '0.0',    '0.0.',      '0.',    who types 0 and point himself has typed what was there
        x,     '0.',     '0.0,4580',  0.4580,  a whole number pasted with a comma
        x,     '0.',     '.4580',     0.4580,  and one without its 0
        x,     '0.4580', '0,4580',    0.4580,  a comma over all of it
        x,     '0.',     '0',         '0.',    what is there cannot be deleted
        x,     '0.',     '',          '0.',    not even all of it
        x,     '0.',     '4580',      0.4580,  digits alone over all of it
        x,     '0.4580', 0.45803,     0.45803, a digit too many stays to be asked about
        x,     '0.4580', 0.458012345, refused, but not any number of them
        x,     '0.',     '0.-',       refused, x has no sign
        x,     '0.',     '0.a',       refused, a letter is no digit
        x,     '0.4',    '1.4',       refused, no x is above 1
        duv,   '0.0',    '0.0-',      '-0.0',  a sign goes to the front
        duv,   '-0.0',   '-0.0+',     '+0.0',  the other one takes its place
        duv,   '+0.0',   '+0.0-',     '-0.0',  and back
        duv,   '0.0',    '0.0\u2212', '-0.0',  a true minus
        duv,   '-0.0',   '-0.034',    -0.034,  a digit behind it
        duv,   '0.0',    '0.0-0,0034', -0.0034, a whole number pasted
        duv,   '0.0',    '0.12',      0.12,    too large for a white; that is asked about later
        cct,   '',       '27',        27,      digits
        cct,   '2700',   '27000',     27000,   a digit too many stays
        lux,   '',       '1,5',       1.5,     any number
        lux,   '',       '1.5.',      refused, with one mark
        lux,   '',       '-1',        refused, and no sign
        """)
    void takesWhatPeopleType(String kind, String was, String proposed, String now, String why) {
        assertEquals(now, pattern(kind).accept(was, proposed).orElse(null));
    }

    @ParameterizedTest(name = "{0}: {1} has {2}")
    @CsvSource(textBlock = """
        x,   0.4580,  4580, true
        x,   0.458,   458,  false
        x,   '0.',    '',   false
        duv, -0.0034, 034,  true
        duv, -0.003,  03,   false
        duv, '0.0',   '',   false
        duv, 0.12,    12,   false
        cct, 2700,    2700, true
        lux, 1500,    1500, false
        """)
    void countsTheDigitsThatWereTyped(String kind, String text, String typed, boolean full) {
        assertEquals(typed, pattern(kind).typed(text));
        assertEquals(full, pattern(kind).isFull(text));
    }

    @Test
    void oneKeyTurnsTheSign() {
        DigitPattern duv = DigitPattern.smallSigned(4);
        assertEquals("-0.0034", duv.turned("0.0034"));
        assertEquals("+0.0034", duv.turned("-0.0034"));
        assertEquals("0.4580", DigitPattern.fraction(4).turned("0.4580"));
    }

    @Test
    void nothingButAFractionStandsBeforeTheDigits() {
        assertThrows(IllegalArgumentException.class, () -> new DigitPattern("1.", 4, false));
    }
}
