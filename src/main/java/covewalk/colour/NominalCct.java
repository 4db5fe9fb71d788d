package covewalk.colour;

import java.util.List;
import java.util.Optional;

/**
 * A nominal CCT of ANSI C78.377 and its quadrangle: the colours that a product may have to be sold as that CCT.
 *
 * @param nominalK the figure on the label, in kelvin
 * @param targetCctK CCT of the middle, in kelvin
 * @param toleranceK how far the quadrangle reaches to either side, in kelvin
 * @param centre the middle, to the four decimals of the standard
 * @param corners warm above, cool above, cool below, warm below the locus; to the four decimals of the standard
 */
public record NominalCct(Edition edition, int nominalK, double targetCctK, double toleranceK, Xy centre, List<Xy> corners) {

    /** Half the height of every quadrangle, in Duv. */
    public static final double DUV_TOLERANCE = 0.006;

    private static final List<NominalCct> ALL = PrintedTable.rows("ansi-c78-377.csv", NominalCct::row);

    /** Editions of the standard; the newer ones bend with the Duv that lamps have. */
    public enum Edition {

        /** Target Duv constant within a quadrangle, so that neighbours do not meet exactly. */
        ANSI_2008("2008"),

        /** Target Duv a function of CCT, so that neighbours meet. Corners by the rule: the table was not read. */
        ANSI_2015_2017("2015/2017");

        private final String years;

        Edition(String years) {
            this.years = years;
        }

        /** The years, as in "2008". */
        public String years() {
            return years;
        }
    }

    public NominalCct {
        corners = List.copyOf(corners);
        if (corners.size() != 4) {
            throw new IllegalArgumentException("a quadrangle has 4 corners, not " + corners.size());
        }
    }

    /** All nominal CCTs of an edition, warm to cool. */
    public static List<NominalCct> all(Edition edition) {
        return ALL.stream().filter(n -> n.edition == edition).toList();
    }

    /** The one whose label says {@code nominalK}; empty where the edition has none. */
    public static Optional<NominalCct> of(Edition edition, int nominalK) {
        return all(edition).stream().filter(n -> n.nominalK == nominalK).findFirst();
    }

    /** The one whose quadrangle holds a colour, the warmer on a shared edge; empty between and outside them. */
    public static Optional<NominalCct> of(Edition edition, Xy colour) {
        return all(edition).stream().filter(n -> n.contains(colour)).findFirst();
    }

    /** Whether a colour lies in the quadrangle; its edges belong to it. */
    public boolean contains(Xy colour) {
        for (int i = 0; i < corners.size(); i++) {
            Xy from = corners.get(i);
            Xy to = corners.get((i + 1) % corners.size());
            double side = (to.x() - from.x()) * (colour.y() - from.y()) - (to.y() - from.y()) * (colour.x() - from.x());
            if (side < -1e-15) { // the corners go round anticlockwise; the margin is rounding
                return false;
            }
        }
        return true;
    }

    private static NominalCct row(PrintedTable.Row row) {
        Edition edition = row.text(0).equals(Edition.ANSI_2008.years) ? Edition.ANSI_2008 : Edition.ANSI_2015_2017;
        double target = row.number(2);
        double tolerance = row.number(3);
        double warm = target - tolerance;
        double cool = target + tolerance;
        double warmDuv = edition == Edition.ANSI_2008 ? row.number(4) : duvOfLamps(warm);
        double middleDuv = edition == Edition.ANSI_2008 ? row.number(4) : duvOfLamps(target);
        double coolDuv = edition == Edition.ANSI_2008 ? row.number(4) : duvOfLamps(cool);
        return new NominalCct(edition, (int) row.number(1), target, tolerance, printed(target, middleDuv), List.of(
                printed(warm, warmDuv + DUV_TOLERANCE), printed(cool, coolDuv + DUV_TOLERANCE),
                printed(cool, coolDuv - DUV_TOLERANCE), printed(warm, warmDuv - DUV_TOLERANCE)));
    }

    /** Target Duv by CCT, ANSI C78.377-2015 (from memory; it gives all ten centres of that edition to four decimals). */
    private static double duvOfLamps(double cctK) {
        return cctK < 2870 ? 0 : 57_700 / (cctK * cctK) - 44.6 / cctK + 0.00854;
    }

    private static Xy printed(double cctK, double duv) {
        Xy xy = new CctDuv(cctK, duv).toXy();
        return new Xy(Math.rint(xy.x() * 1e4) / 1e4, Math.rint(xy.y() * 1e4) / 1e4);
    }
}
