package covewalk.colour;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.DoubleStream;

/**
 * Makes the two stored tables from the colour-matching functions. Wanted only where the observer, c2 or the layout of
 * {@link LocusTable} changes:
 * {@code java -cp target/classes:target/test-classes covewalk.colour.WriteLocusTables src/main/resources/covewalk/colour}
 */
final class WriteLocusTables {

    private static final double WARM_END = 1200; // mired, 833 K: room for the search beyond 1000 K

    private WriteLocusTables() {
    }

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.write(folder.resolve(LocusTable.FILE), bytes(planckian()));
        Files.write(folder.resolve(SpectralLocus.FILE), bytes(spectral()));
    }

    static double[] planckian() {
        PlanckianSums sums = new PlanckianSums();
        int rows = (int) Math.round((WARM_END - LocusTable.HOT_END) / LocusTable.INTERVAL) + 1;
        double[] table = new double[rows * 2 * LocusTable.ORDERS];
        for (int i = 0; i < rows; i++) {
            double[] row = sums.at(LocusTable.HOT_END + LocusTable.INTERVAL * i);
            System.arraycopy(row, 0, table, row.length * i, row.length);
        }
        return table;
    }

    static double[] spectral() {
        return ColourMatching.functions().stream().map(ColourMatching::chromaticity)
                .flatMapToDouble(c -> DoubleStream.of(c.u(), c.v())).toArray();
    }

    private static byte[] bytes(double[] numbers) {
        ByteBuffer buffer = ByteBuffer.allocate(numbers.length * Double.BYTES);
        buffer.asDoubleBuffer().put(numbers);
        return buffer.array();
    }
}
