package covewalk.app.walk;

/**
 * How large things are on the walk: larger where there is room, and never so large that something is cut off, whatever
 * size of text was chosen. Counted in sizes of the text; the figures are those of the layout.
 *
 * @param tall whether the pad stands below
 * @param low whether there is room for a low strip only, and for a smaller sentence
 */
record Fit(boolean tall, boolean low, double textPx, double padWidth, double padHeight) {

    private static final double USUAL_PX = 15;
    /** Four keys of 15 mm at 96 dpi, and what is between them. */
    private static final double LEAST_PAD = 4 * 57 + 3 * 6;
    private static final double LEAST_PX = 11;

    static Fit of(double width, double height, int textPercent) {
        boolean tall = height > width;
        double chosen = USUAL_PX * textPercent / 100;
        double grown = Math.max(chosen, tall ? Math.min(width / 50, height / 72) : Math.min(width / 61, height / 40));
        double most = tall ? Math.min(width / 36, height / 49.5) : Math.min((width - LEAST_PAD) / 31, height / 35.6);
        double text = Math.max(LEAST_PX, Math.min(grown, most));
        boolean low = height < text * (tall ? 59.5 : 39.5);
        double padWidth = tall ? width : Math.max(LEAST_PAD, Math.min(19.5 * text, 0.32 * width));
        double padHeight = Math.max(LEAST_PAD, tall ? Math.min(26 * text, 0.34 * height) : LEAST_PAD);
        return new Fit(tall, low, text, padWidth, padHeight);
    }
}
