package covewalk.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.data.Golden;
import covewalk.report.punch.Sample;
import covewalk.words.Words;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CheckTableTest {

    private final String written = new CheckTable(Words.english()).of(Sample.judgement(), List.of("Cove C2 has no height."));

    @Test
    void isAsKept() {
        Golden.assertSame("check.txt", written);
    }

    @Test
    void countsInItsLastLine() {
        String[] lines = written.split("\n");
        assertEquals("2 beyond, 2 unsettled, 1 within, 1 not read", lines[lines.length - 1]);
    }

    @Test
    void fitsAHundredColumns() {
        assertTrue(Arrays.stream(written.split("\n")).allMatch(line -> line.length() <= 100));
    }

    @Test
    void namesTheRuleAndWhoSetTheLimit() {
        assertTrue(written.contains("set by specification 26 51 00, 2.3") && written.contains("CIE TN 001"));
        String unset = new CheckTable(Words.english()).of(Sample.named(""), List.of());
        assertTrue(unset.replaceAll("\\s+", " ").contains("chosen by the inspector, not a contract limit"), unset);
    }

    @Test
    void textsCannotSteerTheTerminal() {
        String hostile = new CheckTable(Words.english()).of(Sample.named("a\u001B[2Jb\nc\u202Ed\r\u0007"), List.of("e\u001B[31m"));
        assertTrue(hostile.chars().allMatch(c -> c >= ' ' && c != 0x202E || c == '\n'), hostile);
        assertTrue(hostile.endsWith("1 not read\n"));
    }

    @Test
    void neverSaysACertainty() {
        assertFalse(written.contains("1.000"));
    }
}
