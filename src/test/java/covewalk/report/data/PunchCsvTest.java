package covewalk.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.punch.PunchList;
import covewalk.report.punch.Sample;
import covewalk.words.Words;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PunchCsvTest {

    @Test
    void isAsKept() {
        Golden.assertSame("punch-list.csv", new PunchCsv(Words.english()).of(PunchList.of(Sample.judgement())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(\"http://x\",\"y\")", "+1", "-1+2", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "\uFF1D1"})
    void noTextRunsAsAFormula(String formula) {
        // the characters of OWASP, "CSV Injection"; the wide equals sign and leading spaces on top
        List<List<String>> rows = rows(formula);
        int place = rows.get(0).indexOf("place");
        assertEquals("'" + formula, rows.get(1).get(place));
    }

    @Test
    void negativeNumbersStayNumbers() {
        List<List<String>> rows = rows("plain");
        assertEquals("-31.0", rows.get(1).get(rows.get(0).indexOf("delta_cct_k")));
    }

    @Test
    void anyTextComesBackAsItWas() {
        String text = "a \"b\", c\r\nd; é 漢字 \uD83D\uDCA1 " + "x".repeat(10_000);
        List<List<String>> rows = rows(text);
        assertEquals(5, rows.size());
        assertTrue(rows.stream().allMatch(row -> row.size() == rows.get(0).size()));
        assertEquals(text, rows.get(1).get(rows.get(0).indexOf("limit_set_by")));
    }

    @Test
    void numbersHaveAPointInEveryLanguage() {
        String german = new PunchCsv(new Words(Locale.GERMAN)).of(PunchList.of(Sample.judgement()));
        assertTrue(german.contains(",3.4039,0.2214,2.0000,"), german);
    }

    private static List<List<String>> rows(String text) {
        return Rfc4180.rows(new PunchCsv(Words.english()).of(PunchList.of(Sample.named(text))));
    }
}
