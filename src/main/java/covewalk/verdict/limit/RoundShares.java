package covewalk.verdict.limit;

/**
 * How the error rate is spent over rounds of reading again. Who may read again until a verdict suits gets more than
 * one chance to be wrong; so the first round spends 85 % of the rate, the second half of what is left, and so on. All rounds together never spend more than the whole, however many there are.
 */
public final class RoundShares {

    /** Costs a first verdict some 3 of 100 settled places at worst, against spending all of it (computed). */
    private static final double FIRST = 0.85;

    private RoundShares() {
    }

    /**
     * @param round from 1
     * @return the share of the error rate that this round may spend, 0 to 1
     */
    public static double of(int round) {
        return round <= 1 ? FIRST : (1 - FIRST) * Math.pow(0.5, round - 1);
    }
}
