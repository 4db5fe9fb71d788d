package covewalk.verdict.trial;

import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.function.IntFunction;

/**
 * How often each verdict came out over many trials.
 *
 * @param trials joints judged
 */
record Shares(int trials, int beyond, int within) {

    static Shares of(int trials, IntFunction<List<Verdict>> trial) {
        int all = 0;
        int beyond = 0;
        int within = 0;
        for (int i = 0; i < trials; i++) {
            for (Verdict verdict : trial.apply(i)) {
                all++;
                beyond += verdict == Verdict.BEYOND ? 1 : 0;
                within += verdict == Verdict.WITHIN ? 1 : 0;
            }
        }
        return new Shares(all, beyond, within);
    }

    double beyondShare() {
        return (double) beyond / trials;
    }

    double withinShare() {
        return (double) within / trials;
    }

    /** The largest share seen in so many independent trials, but for one time in 700, where the true share is this. */
    static double allowed(double share, int trials) {
        return share + 3 * standardError(share, trials);
    }

    static double standardError(double share, int trials) {
        return Math.sqrt(share * (1 - share) / trials);
    }
}
