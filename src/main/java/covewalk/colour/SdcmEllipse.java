package covewalk.colour;

import java.util.Comparator;
import java.util.List;

/**
 * The one-step ellipse of a standard colour of IEC 60081 (standard deviation of colour matching):
 * steps^2 = g11 dx^2 + 2 g12 dx dy + g22 dy^2. The coefficients are from memory; the resource says how far they agree
 * with other sources.
 *
 * @param colour the standard's name, as F 2700
 * @param cctK the standard's CCT of the colour, in kelvin
 * @param centre the standard's chromaticity
 */
public record SdcmEllipse(String colour, double cctK, Xy centre, double g11, double g12, double g22) {

    private static final double FAR = 0.1; // common practice, no source

    private static final List<SdcmEllipse> STANDARD = PrintedTable.rows("iec-60081-ellipses.csv", SdcmEllipse::row);

    public SdcmEllipse {
        if (!(cctK > 0 && g11 > 0 && g11 * g22 > g12 * g12)) {
            throw new IllegalArgumentException(colour + ": coefficients " + g11 + ", " + g12 + ", " + g22 + " make no ellipse");
        }
    }

    /** The six standard colours, warm to cool. */
    public static List<SdcmEllipse> standard() {
        return STANDARD;
    }

    /** The standard colour nearest in CCT; {@code cctK} is above 0. */
    public static SdcmEllipse nearest(double cctK) {
        if (!(cctK > 0)) {
            throw new IllegalArgumentException("CCT " + cctK + " K has no nearest standard colour: it must be above 0");
        }
        return STANDARD.stream().min(Comparator.comparingDouble(e -> Math.abs(e.cctK - cctK))).orElseThrow();
    }

    /** Steps from one chromaticity to another by this ellipse: 0 from itself, the same both ways. */
    public double steps(Xy from, Xy to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        return Math.sqrt(g11 * dx * dx + 2 * g12 * dx * dy + g22 * dy * dy);
    }

    /** Whether this ellipse's colour is over 10 % from {@code cctK}, so that its steps say little there. */
    public boolean farFrom(double cctK) {
        return !(Math.abs(cctK - this.cctK) <= FAR * this.cctK);
    }

    /** From differences in x,y to the plane in which this ellipse is a circle of radius 1 (Cholesky's factor). */
    public Jacobian toStepPlane() {
        double root = Math.sqrt(g11);
        return new Jacobian(root, g12 / root, 0, Math.sqrt(g22 - g12 * g12 / g11));
    }

    private static SdcmEllipse row(PrintedTable.Row row) {
        return new SdcmEllipse(row.text(0), row.number(1), new Xy(row.number(2), row.number(3)),
                row.number(4), row.number(5), row.number(6));
    }
}
