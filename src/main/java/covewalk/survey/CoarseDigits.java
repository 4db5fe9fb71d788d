package covewalk.survey;

import java.util.List;
import java.util.Optional;

/** Whether the pair that counts was typed with too few digits to compare neighbours by. */
final class CoarseDigits {

    /** Three decimals; a little less, so that 0.001 itself counts. */
    private static final double COARSE = 0.00099;

    private CoarseDigits() {
    }

    static List<Problem> problems(TypedColour colour) {
        if (colour.xy().isPresent()) {
            return check(colour.xy(), "colour.coarse.xy", "x");
        }
        if (colour.uvPrime().isPresent()) {
            return check(colour.uvPrime(), "colour.coarse.uv", "u_prime");
        }
        Typed duv = colour.cctDuv().orElseThrow().second();
        return duv.resolution() >= COARSE ? List.of(Problem.warning("colour.coarse.duv", duv.text()).inColumn("duv"))
                : List.of();
    }

    private static List<Problem> check(Optional<TypedPair> pair, String key, String column) {
        boolean coarse = pair.filter(both -> both.first().resolution() >= COARSE || both.second().resolution() >= COARSE)
                .isPresent();
        return coarse ? List.of(Problem.warning(key).inColumn(column)) : List.of();
    }
}
