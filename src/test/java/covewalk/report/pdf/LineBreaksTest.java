package covewalk.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.BreakIterator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineBreaksTest {

    /** Places are marked by a bar. */
    @ParameterizedTest(name = "{2}")
    @CsvSource(textBlock = """
        calibration due 2027-03-01, calibration |due |2027-03-01, a date is one word
        26 51 00 2.3,               26 |51 |00 |2.3,              a clause is not
        16 ft 4 3/4 in above,       16 ft |4 3/4 in |above,       a length is read foot by foot
        to 10.00 m from it,         to |10.00 m |from |it,        a unit stays with its figure
        10 means of 5 minutes,      10 |means |of |5 |minutes,    a word that begins like a unit does not
        100 % of 24 V,              100 % |of |24 V,              nor is a percentage torn
        (ANSI C78.377-2015/2017),   (ANSI |C78.377-2015/2017),    nor the number of a standard
        stand-off jig,              stand-|off |jig,              a hyphen between words may end a line
        uv-circle; next,            uv-|circle; |next,            wherever it is
        5 in,                       5 in,                         also at the end of a text
        '',                         '',                           no text has no place
        """)
    void aLineEndsWhereAReaderWouldPause(String text, String expected, String why) {
        assertEquals(expected, marked(text));
    }

    private static String marked(String text) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        StringBuilder marked = new StringBuilder();
        int from = 0;
        for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
            marked.append(text, from, to).append(to < text.length() ? "|" : "");
            from = to;
        }
        return marked.append(text.substring(from)).toString();
    }
}
