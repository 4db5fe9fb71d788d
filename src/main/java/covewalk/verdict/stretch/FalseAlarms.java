package covewalk.verdict.stretch;

/**
 * How the share of coves that may show something where there is nothing is spent over their places.
 *
 * @param loneStation share for each station that may be taken for a lone one
 * @param change share for each place where a change or a drift may be seen
 */
record FalseAlarms(double loneStation, double change) {

    /** Of the two halves of the share, what each lone station takes of its own. */
    private static final double LONE = 0.7;

    /**
     * Changes at neighbouring places rest on nearly the same stations, so that shares added up place by place come to
     * more than what happens: by about so much, where the noise is known, for 5 to 200 stations (trials of coves of one
     * colour; docs/verdicts.md has what comes of it).
     */
    private static final double ALIKE_IF_KNOWN = 10;

    /** The same where the noise is estimated from many stations, by a test that reckons with its errors. */
    private static final double ALIKE_IF_ESTIMATED = 2.8;

    /** A few stations have few places that could be alike: no more than so many for each of them. */
    private static final double FEW = 1.5;

    /** Places of unlike reels rest on other stations: each reel more takes off so much of that. */
    private static final double LESS_ALIKE = 0.2;

    /** Under so many stations that test reckons with more than there is. */
    private static final double MANY = 32;

    /**
     * @param ofACove the share of coves
     * @param stations in the cove
     * @param reels that they lie on
     * @param degrees of freedom of the noise; infinite where it is known
     */
    static FalseAlarms of(double ofACove, int stations, int reels, double degrees) {
        double place = ofACove / Math.max(1, 2 * stations);
        double alike = Double.isInfinite(degrees) ? ALIKE_IF_KNOWN
                : ALIKE_IF_ESTIMATED * Math.max(1, MANY / Math.max(1, stations));
        double counted = Math.min(FEW * stations, alike / (1 + LESS_ALIKE * (reels - 1)));
        return new FalseAlarms(LONE * place, Math.min(ofACove, Math.max(1, counted) * place));
    }
}
