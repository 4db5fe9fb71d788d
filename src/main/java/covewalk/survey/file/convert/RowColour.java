package covewalk.survey.file.convert;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.NoCct;
import covewalk.colour.Uv;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import java.util.Arrays;

/** All quantities of one row's colour at a time; those that it has not got are NaN. */
final class RowColour {

    private final double[] values = new double[Quantity.values().length];
    private String problem = "";

    /** Takes the first whole pair of x and y, u' and v', CCT and Duv, and looks whether the others fit in with it. */
    void take(RowCells row, TableHead head) {
        problem = "";
        for (Quantity quantity : Quantity.values()) {
            values[quantity.ordinal()] = row.number(head.place(quantity));
        }
        OtherPairs others = OtherPairs.of(row, head);
        try {
            if (has(Quantity.X, Quantity.Y)) {
                fromXy(new Xy(value(Quantity.X), value(Quantity.Y)));
            } else if (has(Quantity.U_PRIME, Quantity.V_PRIME)) {
                fromUvPrime(new UvPrime(value(Quantity.U_PRIME), value(Quantity.V_PRIME)));
            } else if (has(Quantity.CCT_K, Quantity.DUV)) {
                fromCctDuv();
            } else {
                none("convert.no-pair");
            }
        } catch (IllegalArgumentException outsideTheDiagram) {
            none("convert.no-real-colour");
        }
        if (problem.isEmpty()) {
            problem = others.problem();
            others.halves().forEach(half -> set(half, Double.NaN));
        }
    }

    private boolean has(Quantity first, Quantity second) {
        return value(first) == value(first) && value(second) == value(second); // NaN is unlike itself
    }

    private void fromXy(Xy xy) {
        UvPrime uvPrime = xy.toUvPrime();
        set(Quantity.U_PRIME, uvPrime.u());
        set(Quantity.V_PRIME, uvPrime.v());
        temperature(ColourTemperature.of(xy));
    }

    private void fromUvPrime(UvPrime uvPrime) {
        Xy xy = uvPrime.toXy();
        set(Quantity.X, xy.x());
        set(Quantity.Y, xy.y());
        temperature(ColourTemperature.of(uvPrime));
    }

    private void fromCctDuv() {
        double cctK = value(Quantity.CCT_K);
        double duv = value(Quantity.DUV);
        if (!(cctK >= CctDuv.MIN_CCT_K && cctK <= CctDuv.MAX_CCT_K)) {
            none("convert.cct-range");
            return;
        }
        if (!(Math.abs(duv) <= CctDuv.MAX_DUV)) {
            none("convert.duv-range");
            return;
        }
        fromUv(new CctDuv(cctK, duv).toUv());
    }

    private void fromUv(Uv uv) {
        if (!uv.isReal()) {
            none("convert.no-real-colour");
            return;
        }
        Xy xy = uv.toXy();
        set(Quantity.X, xy.x());
        set(Quantity.Y, xy.y());
        set(Quantity.U_PRIME, uv.u());
        set(Quantity.V_PRIME, 1.5 * uv.v());
    }

    private void temperature(ColourTemperature temperature) {
        if (temperature instanceof CctDuv found) {
            set(Quantity.CCT_K, found.cctK());
            set(Quantity.DUV, found.duv());
        } else if (temperature == NoCct.NO_REAL_COLOUR) {
            none("convert.no-real-colour");
        } else {
            set(Quantity.CCT_K, Double.NaN);
            set(Quantity.DUV, Double.NaN);
            problem = temperature == NoCct.TOO_FAR_FROM_LOCUS ? "convert.too-far"
                    : temperature == NoCct.BELOW_1000_K ? "convert.too-warm" : "convert.too-cold";
        }
    }

    private void none(String why) {
        Arrays.fill(values, Double.NaN);
        problem = why;
    }

    private void set(Quantity quantity, double value) {
        values[quantity.ordinal()] = value;
    }

    double value(Quantity quantity) {
        return values[quantity.ordinal()];
    }

    /** Why something is missing, as the key of a problem, or empty. */
    String problem() {
        return problem;
    }
}
