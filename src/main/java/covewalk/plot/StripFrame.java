package covewalk.plot;

import covewalk.survey.Cove;

/**
 * How much of a cove a strip shows, and how it is drawn.
 *
 * @param widthMm of the picture; its texts keep their size, so that a narrow screen gets a narrow picture, not a small one
 * @param fromM where it begins, m from the datum
 * @param toM where it ends, m, beyond {@code fromM}
 * @param times how many times larger differences of colour are shown; 0 for as many as the cove's colours allow
 * @param on what it is drawn on
 */
public record StripFrame(double widthMm, double fromM, double toM, int times, On on) {

    /** What a strip is drawn on. */
    public enum On {
        /** Paper, with its captions. */
        PAGE,
        /** A screen, where height is dear and the captions stand beside it. */
        SCREEN,
        /** A screen in the dark, where no light area may light the ceiling that is measured. */
        DARK_SCREEN
    }

    /** What a page shows. */
    static final double PAGE_MM = 180;
    static final double MARGIN_MM = 5;
    private static final double NARROWEST_MM = 40;

    public StripFrame {
        widthMm = Math.max(NARROWEST_MM, widthMm);
        if (!(toM > fromM && fromM >= 0 && times >= 0)) {
            throw new IllegalArgumentException("a strip from " + fromM + " m to " + toM + " m, " + times + " times larger");
        }
    }

    /** The whole of a cove as it stands on a page. */
    public static StripFrame page(Cove cove) {
        return new StripFrame(PAGE_MM, 0, cove.lengthM(), 0, On.PAGE);
    }

    /** The whole of a cove as it stands on a screen. */
    public static StripFrame screen(Cove cove, double widthMm, boolean dark) {
        return new StripFrame(widthMm, 0, cove.lengthM(), 0, dark ? On.DARK_SCREEN : On.SCREEN);
    }

    /** The piece of it around a place, as far as the cove goes. */
    public StripFrame around(double atM, double reachM) {
        return new StripFrame(widthMm, Math.max(fromM, atM - reachM), Math.min(toM, atM + reachM), times, on);
    }

    public StripFrame amplified(int timesLarger) {
        return new StripFrame(widthMm, fromM, toM, timesLarger, on);
    }

    /** Where a position lies in the picture, mm from its left edge; at the edge of the strip where it is not shown. */
    public double xMm(double positionM) {
        return scale().x(positionM);
    }

    /** Which position lies there, m; the nearest shown outside the strip. */
    public double positionM(double xMm) {
        double share = Math.max(0, Math.min(1, (xMm - MARGIN_MM) / scale().width()));
        return fromM + share * (toM - fromM);
    }

    boolean low() {
        return on != On.PAGE;
    }

    boolean dark() {
        return on == On.DARK_SCREEN;
    }

    Scale scale() {
        return new Scale(fromM, toM, MARGIN_MM, widthMm - 2 * MARGIN_MM);
    }
}
