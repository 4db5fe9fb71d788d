package covewalk.colour;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;

/**
 * Makes the two stored tables from the colour-matching functions. Wanted only where the observer, c2 or the layout of
 * {@link LocusTable} changes:
 * {@code java -cp target/classes:target/test-classes covewalk.colour.WriteLocusTables src/main/resources/covewalk/colour}
 */
final class WriteLocusTables {

    private WriteLocusTables() {
    }

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.write(folder.resolve(LocusTable.FILE), bytes(planckian()));
        Files.write(folder.resolve(SpectralLocus.FILE), bytes(spectral()));
    }

    static double[] planckian() {
        PlanckianSums sums = new PlanckianSums();
        double[] table = new double[LocusTable.STRETCHES * Septic.TERMS * LocusTable.PARTS];
        for (int i = 0; i < LocusTable.STRETCHES; i++) {
            double middle = LocusTable.HOT_END + LocusTable.STRETCH * (i + 0.5);
            for (int part = 0; part < LocusTable.PARTS; part++) {
                double[] terms = fit(sums, middle, part);
                for (int k = 0; k < Septic.TERMS; k++) {
                    table[(i * Septic.TERMS + k) * LocusTable.PARTS + part] = terms[k];
                }
            }
        }
        return table;
    }

    /** The polynomial, in mired from the middle, through the exact values at Chebyshev's points of a stretch. */
    private static double[] fit(PlanckianSums sums, double middle, int part) {
        double[] at = new double[Septic.TERMS];
        double[] value = new double[Septic.TERMS];
        for (int j = 0; j < at.length; j++) {
            at[j] = LocusTable.STRETCH / 2 * Math.cos(Math.PI * (j + 0.5) / at.length);
            value[j] = axes(sums.at(middle + at[j]))[part];
        }
        return new PolynomialFunctionLagrangeForm(at, value).getCoefficients();
    }

    /** A point with its derivatives as tu, tv, along, across. */
    private static double[] axes(double[] point) {
        double speed = Math.hypot(point[2], point[3]);
        double tu = point[2] / speed;
        double tv = point[3] / speed;
        return new double[] {tu, tv, point[0] * tu + point[1] * tv, point[1] * tu - point[0] * tv};
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
