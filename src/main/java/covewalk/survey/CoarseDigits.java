package covewalk.survey;

import java.util.List;

/** Whether the pair that counts was typed with too few digits to compare neighbours by. */
final class CoarseDigits {

    /** Three decimals; a little less, so that 0.001 itself counts. */
    private static final double COARSE = 0.00099;

    private CoarseDigits() {
    }

    static List<Problem> problems(TypedColour colour) {
        if (!are(colour)) {
            return List.of();
        }
        if (colour.xy().isPresent()) {
            return List.of(Problem.warning("colour.coarse.xy").inColumn("x"));
        }
        if (colour.uvPrime().isPresent()) {
            return List.of(Problem.warning("colour.coarse.uv").inColumn("u_prime"));
        }
        return List.of(Problem.warning("colour.coarse.duv", colour.cctDuv().orElseThrow().second().text()).inColumn("duv"));
    }

    static boolean are(TypedColour colour) {
        if (colour.xy().isPresent()) {
            return are(colour.xy().get());
        }
        return colour.uvPrime().isPresent() ? are(colour.uvPrime().get())
                : colour.cctDuv().orElseThrow().second().resolution() >= COARSE;
    }

    private static boolean are(TypedPair pair) {
        return pair.first().resolution() >= COARSE || pair.second().resolution() >= COARSE;
    }
}
