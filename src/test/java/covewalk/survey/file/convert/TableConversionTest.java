package covewalk.survey.file.convert;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.meter.HeaderTable;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Illuminant A has x 0.44758, y 0.40745 (CIE 15) and u' 0.2560, v' 0.5243; with c2 of CIE 15 its CCT is 2856 K within 0.5 K and
 * its Duv 0 within 1e-5. For x 0.4580, y 0.4102 a search over direct sums of Planck's law with the CIE 1931 functions at 1 nm, made
 * apart from this program, gives u' 0.261475, v' 0.526918, CCT 2723.09 K and Duv 0.0000106.
 */
class TableConversionTest {

    @Test
    void addsWhatIlluminantALacks() throws IOException {
        String[] cells = converted("x,y\n0.44758,0.40745\n", 6).split("\n")[1].split(",", -1);
        assertEquals("0.44758,0.40745", cells[0] + "," + cells[1]);
        assertEquals(0.2560, Double.parseDouble(cells[2]), 5e-5);
        assertEquals(0.5243, Double.parseDouble(cells[3]), 5e-5);
        assertEquals(2856, Double.parseDouble(cells[4]), 0.5);
        assertEquals(0, Double.parseDouble(cells[5]), 1e-5);
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '!', textBlock = """
        x,y|0.4580,0.4102          ! 4  ! x,y,u_prime,v_prime,cct_k,duv,problem|0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! columns are appended
        x;y|0,4580;0,4102          ! 4  ! x;y;u_prime;v_prime;cct_k;duv;problem|0,4580;0,4102;0.2615;0.5269;2723;0.00001061; ! semicolons stay, cells stay, what is added has points
        No,x,y,cct_k|7,0.4580,0.4102,  ! 4  ! No,x,y,cct_k,u_prime,v_prime,duv,problem|7,0.4580,0.4102,2723,0.2615,0.5269,0.00001061, ! a blank cell is filled in
        x,y,cct_k|0.4580,0.4102,2700   ! 4  ! x,y,cct_k,u_prime,v_prime,duv,problem|0.4580,0.4102,2700,0.2615,0.5269,0.00001061, ! a typed cell stays, x and y count
        CIE x,CIE y|0.4580,0.4102  ! 4  ! CIE x,CIE y,u_prime,v_prime,cct_k,duv,problem|0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! the trade's names
        # lamps|x,y|0.4580,0.4102  ! 4  ! # lamps|x,y,u_prime,v_prime,cct_k,duv,problem|0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! lines before the header stay
        x,y||0.4580,0.4102         ! 4  ! x,y,u_prime,v_prime,cct_k,duv,problem||0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! an empty line stays
        x,y|,|0.4580,0.4102        ! 4  ! x,y,u_prime,v_prime,cct_k,duv,problem|,,,,,,|0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! a row of blank cells stays, as wide as the others
        x,y|0.4580,0.4102,hall     ! 4  ! x,y,u_prime,v_prime,cct_k,duv,problem|0.4580,0.4102,0.2615,0.5269,2723,0.00001061,,hall ! a cell beyond the header stays behind all others
        n,x,y|=1+1,0.4580,0.4102   ! 4  ! n,x,y,u_prime,v_prime,cct_k,duv,problem|=1+1,0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! a cell of the user's own file stays, formula or not
        n,x,y|"a,""b""\",0.4580,0.4102 ! 4  ! n,x,y,u_prime,v_prime,cct_k,duv,problem|"a,""b""\",0.4580,0.4102,0.2615,0.5269,2723,0.00001061, ! quotes stay
        """)
    void keepsTheRowsAndAddsColumns(String in, int digits, String out, String why) throws IOException {
        assertEquals(out.replace('|', '\n') + "\n", converted(in.replace('|', '\n') + "\n", digits), why);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '!', textBlock = """
        x,y|0.9,0.8           ! 0.9,0.8,,,,,"No colour that a light can have: x 0.9 y 0.8"               ! outside the diagram
        x,y|0.1,0.1           ! 0.1,0.1,,,,,"No colour that a light can have: x 0.1 y 0.1"               ! outside the spectral locus
        x,y|0.3,0.6           ! 0.3,0.6,0.1250,0.5625,,,"Farther than 0.05 from the Planckian locus (Duv), so without a CCT: x 0.3 y 0.6" ! green: u' and v' are given all the same
        x,y|Over,0.4          ! Over,0.4,,,,,"No pair of numbers to convert: x Over y 0.4"               ! a mark of the meter
        cct_k,duv|900,0       ! 900,0,,,,,"The CCT is outside 1000 to 20000 K: cct_k 900 duv 0"          ! too low a CCT
        cct_k,duv|2700,0.06   ! 2700,0.06,,,,,"The Duv is outside -0.05 to 0.05: cct_k 2700 duv 0.06"    ! too large a Duv
        cct_k,duv|1000,0.04   ! 1000,0.04,,,,,"No colour that a light can have: cct_k 1000 duv 0.04"     ! beyond the spectral locus
        x,y,cct_k,duv|0.4580,,2700,0.001 ! 0.4580,,2700,0.001,0.2622,0.5288,"Half a pair stays half, since its other half would be of another colour: x 0.4580 cct_k 2700 duv 0.001" ! x alone beside CCT and Duv
        x,y,cct_k,duv|Over,0.41,2700,0.001 ! Over,0.41,2700,0.001,0.2622,0.5288,"Half a pair stays half, since its other half would be of another colour: x Over y 0.41 cct_k 2700 duv 0.001" ! a mark of the meter beside CCT and Duv
        x,y,cct_k,duv|0.4580,0.4102,4000,0.001 ! 0.4580,0.4102,4000,0.001,0.2615,0.5269,"These are not one colour within their digits; the first pair counts: x 0.4580 y 0.4102 cct_k 4000 duv 0.001" ! two pairs, two colours
        x,y,cct_k,duv|0.4580,0.4102,2723,0.0000 ! 0.4580,0.4102,2723,0.0000,0.2615,0.5269, ! two pairs, one colour
        x,y,cct_k,duv|0.4580,0.4102,2700, ! 0.4580,0.4102,2700,0.00001061,0.2615,0.5269, ! a CCT without Duv is no half pair: meters give it so
        x,y|"0.4,0.4          ! ""\"0.4,0.4",,,,,,"A quotation mark opens a cell and none closes it: the cells cannot be told apart" ! a quote left open
        """)
    void saysWhyARowCannotBeConverted(String in, String row, String why) throws IOException {
        assertEquals(row, converted(in.replace('|', '\n') + "\n", 4).split("\n")[1], why);
    }

    @Test
    void countsRowsAndProblems() throws IOException {
        ConvertResult result = conversion(6).convert(stream("x,y\n0.4580,0.4102\n\n0.9,0.9\n"), new ByteArrayOutputStream());
        assertEquals("2 rows, 1 problem, refused false", result.rows() + " rows, " + result.problems() + " problem, refused "
                + result.refusal().isPresent());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '!', textBlock = """
        ''           ! There are no rows to convert.
        hue,tint|1,2 ! No row names columns that give a colour: needed are x and y, u_prime and v_prime, or cct_k and duv, or the trade's other names for them. Nothing was converted.
        x,x,y|0.4580,0.4670,0.4102 ! Several columns read as x, and nobody can say which one counts. Rename all but one; nothing was converted.
        """)
    void saysWhyATableCannotBeConverted(String in, String words) throws IOException {
        ConvertResult result = conversion(6).convert(stream(in.replace('|', '\n')), new ByteArrayOutputStream());
        assertEquals(words, result.refusal().orElseThrow().sentence(Locale.ROOT));
    }

    /** Six digits of u', v' are worth 5e-7; there and back x and y must be the same to four decimals. */
    @Test
    void comesBackToTheSameXAndY() throws IOException {
        String there = converted(whites(500), 9);
        StringBuilder pairs = new StringBuilder("cct_k,duv\n");
        there.lines().skip(1).map(line -> line.split(",")).forEach(cells -> pairs.append(cells[4]).append(',').append(cells[5]).append('\n'));
        String[] back = converted(pairs.toString(), 4).split("\n");
        String[] first = there.split("\n");
        for (int i = 1; i < first.length; i++) {
            String[] cells = back[i].split(",");
            assertEquals(first[i].substring(0, 13), cells[2] + "," + cells[3], back[i]);
        }
    }

    @Test
    void givesTheSameBytesHoweverTheStreamIsCutAndHoweverManyWork() throws IOException {
        byte[] in = ("No,x,y\n" + whites(30_000).substring(4).replaceAll("(?m)^", "\"a\nb\",")).getBytes(StandardCharsets.UTF_8);
        assertArrayEquals(bytes(new ByteArrayInputStream(in), 1), bytes(new Trickle(in), 3));
    }

    @Test
    void keepsEachRowsOwnLineEnd() throws IOException {
        assertEquals("\r\n|\n|\r|", converted("x,y\r\n0.4580,0.4102\n0.4580,0.4102\r0.4580,0.4102", 4).replaceAll("[^\r\n|]+", "|").substring(1));
    }

    @ParameterizedTest
    @CsvSource({"UTF-16LE", "UTF-16BE"})
    void writesUtf8ForUtf16(String charset) throws IOException {
        byte[] in = "\uFEFFprobe;x;y\r\nK\u00fcche \ud83d\udca1;0,4580;0,4102\r\n".getBytes(Charset.forName(charset));
        String out = new String(bytes(new ByteArrayInputStream(in), 2), StandardCharsets.UTF_8);
        assertTrue(out.startsWith("\uFEFFprobe;x;y;u_prime;v_prime;cct_k;duv;problem\r\nK\u00fcche \ud83d\udca1;0,4580;0,4102;0.2615"), out);
    }

    @Test
    void leavesBytesOfOtherEncodingsAsTheyAre() throws IOException {
        Charset old = Charset.forName("windows-1252");
        String out = new String(bytes(new ByteArrayInputStream("Bezeichnung;Farbort x;Farbort y\nK\u00fcche;0,4580;0,4102\n".getBytes(old)), 2), old);
        assertTrue(out.contains("\nK\u00fcche;0,4580;0,4102;0.2615"), out);
    }

    @Test
    void stopsAtARowThatIsNone() throws IOException {
        String long1 = "1".repeat(20_000_000);
        ConvertResult result = conversion(6).convert(stream("x,y\n0.4580,0.4102\n" + long1), new ByteArrayOutputStream());
        assertEquals("After 1 rows came one of more than 16 million characters, which no table has; what came before it was converted. "
                + "Check the file there, perhaps for a quotation mark that nothing closes.", result.refusal().orElseThrow().sentence(Locale.ROOT));
    }

    private static String whites(int rows) {
        Random random = new Random(9);
        StringBuilder table = new StringBuilder("x,y\n");
        for (int i = 0; i < rows; i++) {
            double x = 0.31 + 0.19 * random.nextDouble();
            table.append(String.format(Locale.ROOT, "%.4f,%.4f\n", x, 0.23 + 0.38 * x + 0.02 * random.nextDouble()));
        }
        return table.toString();
    }

    private static TableConversion conversion(int digits) {
        return new TableConversion(HeaderTable.ofTheTrade(), new ConvertOptions(digits, Locale.ROOT));
    }

    private static String converted(String table, int digits) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        conversion(digits).convert(stream(table), out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static byte[] bytes(InputStream in, int workers) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new TableConversion(HeaderTable.ofTheTrade(), new ConvertOptions(4, Locale.ROOT), workers).convert(in, out);
        return out.toByteArray();
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Gives a few bytes at a time, as a pipe may. */
    private static final class Trickle extends InputStream {

        private final ByteArrayInputStream bytes;

        Trickle(byte[] bytes) {
            this.bytes = new ByteArrayInputStream(bytes);
        }

        @Override
        public int read() {
            return bytes.read();
        }

        @Override
        public int read(byte[] to, int from, int most) {
            return bytes.read(to, from, Math.min(most, 997));
        }
    }
}
