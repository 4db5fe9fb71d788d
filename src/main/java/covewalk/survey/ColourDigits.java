package covewalk.survey;

import java.util.Locale;

/** Numbers inside the sentences of problems: with a point, whatever the language. */
final class ColourDigits {

    private ColourDigits() {
    }

    static String cct(double cctK) {
        return String.format(Locale.ROOT, "%.0f", cctK);
    }

    static String duv(double duv) {
        return String.format(Locale.ROOT, "%.4f", duv);
    }

    static String steps(double steps) {
        return String.format(Locale.ROOT, "%.1f", steps);
    }

    /** Metres to the millimetre, without zeros that say nothing. */
    static String metres(double metres) {
        String text = String.format(Locale.ROOT, "%.3f", metres);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
