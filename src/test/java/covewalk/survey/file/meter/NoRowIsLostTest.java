package covewalk.survey.file.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a file holds, its rows are those in the log and those set aside; counted twice, by code that shares nothing. */
class NoRowIsLostTest {

    private static final String[] BITS = {"2712", "0.0012", "0,0012", "Over", "\"", "\"\"", "\n", "\r\n", "\r", ";", ",", "\t", " ", "\0",
        "CCT", "Duv", "x", "#", "\u00e9", "\u8272", "=", "'", "-----", "\"2712\",\"0.0012\"\n", "2712,0.0012\n", "2712;0,0012\r\n", "\uFEFF"};
    private static final List<String> CHARSETS = List.of("UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "Shift_JIS");
    private static final Stations AT_ONE = new Stations.Evenly(SurveyOnDisk.typed("1"), SurveyOnDisk.typed("0"));

    @TempDir
    Path temporary;

    @RepeatedTest(60)
    void inARandomMessUnderAHeader(RepetitionInfo repetition) throws IOException {
        Random random = new Random(repetition.getCurrentRepetition());
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        Charset charset = Charset.forName(CHARSETS.get(random.nextInt(CHARSETS.size())));
        String mark = charset.name().startsWith("UTF-16") ? "\uFEFF" : "";
        ImportResult result = survey.add(mark + "CCT,Duv\n2712,0.0012\n" + mess(random, 200), charset, SurveyOnDisk.at(AT_ONE));
        assertTrue(result.refusals().isEmpty(), () -> SurveyOnDisk.said(result));
        assertEquals(result.rows(), result.kept() + result.setAside().size());
        assertEquals(result.kept(), survey.log().size());
    }

    @Test
    void inTenThousandMessesCountedFromTheirBytes() {
        Random random = new Random(20261005);
        for (int i = 0; i < 10_000; i++) {
            Charset charset = Charset.forName(CHARSETS.get(i % CHARSETS.size()));
            byte[] bytes = mess(random, 1 + random.nextInt(60)).getBytes(charset);
            for (char separator : new char[] {',', ';', '\t'}) {
                FileText text = FileText.of(bytes, charset);
                int split = new RowSplitter(text.text(), separator).all().size();
                assertEquals(split, RowCount.of(bytes, charset, separator), () -> "in " + charset + ": " + text.text());
            }
        }
    }

    @Test
    void keepsEveryLetterOfTheRowsItSplits() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            String mess = mess(random, 60);
            StringBuilder raw = new StringBuilder();
            new RowSplitter(mess, ',').all().forEach(row -> raw.append(row.raw()));
            assertEquals(ink(mess), ink(raw.toString()));
        }
    }

    /** So that the check on every import is known to be able to fail. */
    @Test
    void tellsWhenTheTwoCountsDisagree() throws IOException {
        byte[] bytes = "CCT,Duv\n2712,0.0012\n2713,0.0012\n".getBytes(StandardCharsets.UTF_8);
        MeterTable whole = MeterTable.in(FileText.readingsOf(bytes), HeaderTable.ofTheTrade(), Map.of()).orElseThrow();
        MeterTable short1 = new MeterTable(whole.text(), whole.separator(), whole.header(), whole.columns(), 1, whole.rows().subList(0, 1));
        assertEquals(Optional.empty(), RowAccount.disagreement(bytes, whole));
        assertEquals("The file holds 3 rows by an independent count, and 2 were read. Everything read was kept and the file is in originals; "
                + "compare the two before using these readings.", RowAccount.disagreement(bytes, short1).orElseThrow().sentence(Locale.ROOT));
    }

    private static String ink(String text) {
        return text.replaceAll("[ \t\r\n,;\"]", "");
    }

    private static String mess(Random random, int bits) {
        StringBuilder mess = new StringBuilder();
        for (int i = 0; i < bits; i++) {
            mess.append(BITS[random.nextInt(BITS.length)]);
        }
        return mess.toString();
    }
}
