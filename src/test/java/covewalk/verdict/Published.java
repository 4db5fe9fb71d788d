package covewalk.verdict;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;

/** The figures in check-values.csv, by their id; each has its source beside it there. */
public final class Published {

    /** A comma outside quotation marks. */
    private static final String COMMA = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    private Published() {
    }

    public static double value(String id) {
        return Double.parseDouble(text(id));
    }

    /** A whole series. */
    public static double[] series(String id) {
        return Arrays.stream(text(id).split(";")).mapToDouble(Double::parseDouble).toArray();
    }

    private static String text(String id) {
        try (InputStream file = Published.class.getResourceAsStream("check-values.csv")) {
            return new String(file.readAllBytes(), UTF_8).lines().filter(line -> line.startsWith(id + ","))
                    .map(line -> line.split(COMMA)[3]).findFirst().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
