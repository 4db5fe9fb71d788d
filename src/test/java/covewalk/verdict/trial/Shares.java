package covewalk.verdict.trial;

import covewalk.verdict.limit.Verdict;
import java.util.function.IntFunction;

/** How often each verdict came out over many trials. */
record Shares(int trials, int beyond, int within) {

    static Shares of(int trials, IntFunction<Verdict> trial) {
        int beyond = 0;
        int within = 0;
        for (int i = 0; i < trials; i++) {
            Verdict verdict = trial.apply(i);
            beyond += verdict == Verdict.BEYOND ? 1 : 0;
            within += verdict == Verdict.WITHIN ? 1 : 0;
        }
        return new Shares(trials, beyond, within);
    }

    double beyondShare() {
        return (double) beyond / trials;
    }

    double withinShare() {
        return (double) within / trials;
    }
}
