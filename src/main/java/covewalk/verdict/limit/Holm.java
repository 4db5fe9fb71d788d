package covewalk.verdict.limit;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Holm's step-down method: which of many verdicts stand if the chance of even one wrong one among them all is held
 * (S. Holm, Scandinavian Journal of Statistics 6, 1979, 65).
 */
public final class Holm {

    private Holm() {
    }

    /**
     * @param errors for each verdict the chance of so extreme a measurement at the limit, 0 to 1
     * @param errorRate for all of them together
     * @return for each whether it stands
     */
    public static boolean[] stands(double[] errors, double errorRate) {
        Integer[] order = new Integer[errors.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> errors[i]));
        boolean[] stands = new boolean[errors.length];
        for (int rank = 0; rank < order.length && errors[order[rank]] <= errorRate / (errors.length - rank); rank++) {
            stands[order[rank]] = true;
        }
        return stands;
    }
}
