package covewalk.survey.file;

import com.opencsv.CSVReader;
import covewalk.survey.file.convert.ConvertOptions;
import covewalk.survey.file.convert.ConvertResult;
import covewalk.survey.file.convert.TableConversion;
import covewalk.survey.file.meter.HeaderTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Converts a million rows of x, y, and reads the same rows with OpenCSV alone, for comparison. {@code write FILE} makes
 * the rows; {@code convert FILE} and {@code read FILE} do one of the two, each in its own virtual machine when called so;
 * {@code both FILE} alternates them in one. docs/performance.md gives the commands and what came out.
 */
public final class MillionRows {

    private static final int ROWS = 1_000_000;
    private static final int TIMES = 5;

    private MillionRows() {
    }

    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[1]);
        switch (args[0]) {
            case "write" -> write(file);
            case "convert" -> say("converted", convert(file));
            case "read" -> say("read by OpenCSV", read(file));
            default -> alternate(file);
        }
    }

    private static void alternate(Path file) throws Exception {
        for (int i = 0; i < TIMES; i++) {
            say("read by OpenCSV", read(file));
            say("converted", convert(file));
        }
    }

    /** Whites between 2200 and 6500 K or so, four decimals as meters give them. */
    private static void write(Path file) throws IOException {
        Random random = new Random(20260930);
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write("x,y\n");
            for (int i = 0; i < ROWS; i++) {
                double x = 0.31 + 0.19 * random.nextDouble();
                out.write(String.format(Locale.ROOT, "%.4f,%.4f%n", x, 0.23 + 0.38 * x + 0.02 * random.nextDouble()));
            }
        }
    }

    private static double convert(Path file) throws IOException {
        long start = System.nanoTime();
        try (InputStream in = Files.newInputStream(file);
                OutputStream out = Files.newOutputStream(Path.of(file + ".converted"))) {
            ConvertResult result = new TableConversion(HeaderTable.ofTheTrade(), new ConvertOptions(6, Locale.ROOT)).convert(in, out);
            expect(result.rows());
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private static double read(Path file) throws Exception {
        long start = System.nanoTime();
        long rows = -1; // the header
        try (CSVReader in = new CSVReader(Files.newBufferedReader(file))) {
            while (in.readNext() != null) {
                rows++;
            }
        }
        expect(rows);
        return (System.nanoTime() - start) / 1e9;
    }

    private static void expect(long rows) {
        if (rows != ROWS) {
            throw new IllegalStateException(rows + " rows instead of " + ROWS);
        }
    }

    private static void say(String what, double seconds) {
        System.out.printf(Locale.ROOT, "%s: %.2f s%n", what, seconds);
    }
}
