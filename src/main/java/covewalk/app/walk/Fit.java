package covewalk.app.walk;

/**
 * How large things are on the walk: larger where there is room, and never so large that something is cut off, whatever
 * size of text was chosen. Counted in sizes of the text; the figures are those of the layout.
 *
 * @param tall whether the pad stands below
 * @param low whether there is room for a low strip only, and for a smaller sentence
 * @param stays what keeps its place; the rest scrolls with what is said and typed
 */
record Fit(boolean tall, boolean low, Stays stays, double textPx, double padWidth, double padHeight) {

    /** What is always in sight, beside the fields: each less than the one before. */
    enum Stays { ALL, PAD_AND_ACTIONS, PAD }

    private static final double USUAL_PX = 15;
    /** Four keys of 15 mm at 96 dpi, and what is between them. */
    private static final double LEAST_PAD = 4 * 57 + 3 * 6;
    private static final double LEAST_PX = 11;
    /** In sizes of the text: what is said and typed beside the pad; everything above each other, with the pad at the right and below. */
    private static final double WIDE = 31;
    private static final double HIGH = 35.6;
    private static final double HIGH_ABOVE_PAD = 49.5;
    /** All but the pad, above each other: where the pad gets no lower. */
    private static final double WITHOUT_PAD = 37;
    private static final double ACTIONS = 5.5;
    /** Of the height, where everything else scrolls above the pad. */
    private static final double PAD_SHARE = 0.6;

    static Fit of(double width, double height, int textPercent) {
        boolean tall = height > width || width < LEAST_PAD + WIDE * LEAST_PX;
        double chosen = USUAL_PX * textPercent / 100;
        double grown = Math.max(chosen, tall ? Math.min(width / 50, height / 72) : Math.min(width / 61, height / 40));
        double most = tall ? Math.min(width / 36, Math.min(height / HIGH_ABOVE_PAD, (height - LEAST_PAD) / WITHOUT_PAD))
                : Math.min((width - LEAST_PAD) / WIDE, height / HIGH);
        double text = Math.max(LEAST_PX, Math.min(grown, most));
        boolean low = height < text * (tall ? 59.5 : 39.5);
        Stays stays = stays(tall, height);
        double padWidth = tall ? width : Math.max(LEAST_PAD, Math.min(19.5 * text, 0.32 * width));
        double padHeight = stays == Stays.PAD ? Math.min(LEAST_PAD, tall ? PAD_SHARE * height : height - LEAST_PX)
                : Math.max(LEAST_PAD, tall ? Math.min(26 * text, 0.34 * height) : LEAST_PAD);
        return new Fit(tall, low, stays, text, padWidth, padHeight);
    }

    private static Stays stays(boolean tall, double height) {
        if (height >= LEAST_PX * (tall ? HIGH_ABOVE_PAD : HIGH)) {
            return Stays.ALL;
        }
        return !tall && height >= LEAST_PAD + ACTIONS * LEAST_PX ? Stays.PAD_AND_ACTIONS : Stays.PAD;
    }

    /** Whether no room is left for keys of 15 mm. */
    boolean smallKeys() {
        return padHeight < LEAST_PAD;
    }
}
