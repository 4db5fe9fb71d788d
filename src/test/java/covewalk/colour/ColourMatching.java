package covewalk.colour;

import java.util.List;

/**
 * The CIE 1931 2 degree standard observer at one wavelength (ISO/CIE 11664-1), 360 to 830 nm in steps of 1 nm.
 *
 * @param wavelengthNm wavelength in standard air as tabulated, nanometres
 */
record ColourMatching(double wavelengthNm, double x, double y, double z) {

    /** The whole table, in order of wavelength. */
    static List<ColourMatching> functions() {
        return PrintedTable.rows("cie-1931-2deg-1nm.csv",
                row -> new ColourMatching(row.number(0), row.number(1), row.number(2), row.number(3)));
    }

    /** Where light of this one wavelength lies in the CIE 1960 diagram. */
    Uv chromaticity() {
        double sum = x + 15 * y + 3 * z;
        return new Uv(4 * x / sum, 6 * y / sum);
    }
}
