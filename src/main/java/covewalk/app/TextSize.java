package covewalk.app;

/** Sizes of text around the places, in px: as chosen, or as there is room for. */
final class TextSize {

    static final double USUAL_PX = 15;
    /** No smaller than can be read. */
    static final double LEAST_PX = 11;

    private TextSize() {
    }

    /** @param room 0 or less where it is not known yet */
    static double atMost(double room, double chosen) {
        return room > 0 ? Math.max(LEAST_PX, Math.min(chosen, room)) : chosen;
    }
}
