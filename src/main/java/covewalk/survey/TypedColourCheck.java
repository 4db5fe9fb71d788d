package covewalk.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * What is wrong, or looks wrong, with a colour as somebody typed it. Refused is only what cannot be; what is unlikely
 * for a white is told and taken. Each problem's column is that of the reading log: {@code cct_k}, {@code duv}, {@code x},
 * {@code y}, {@code u_prime}, {@code v_prime}.
 */
public final class TypedColourCheck {

    private TypedColourCheck() {
    }

    /** All problems, those of x and y first; a colour with no refusal among them can be converted. */
    public static List<Problem> problems(TypedColour colour) {
        List<Problem> problems = new ArrayList<>();
        colour.xy().ifPresent(pair -> problems.addAll(XyCheck.problems(pair)));
        colour.uvPrime().ifPresent(pair -> problems.addAll(UvPrimeCheck.problems(pair)));
        colour.cctDuv().ifPresent(pair -> problems.addAll(CctDuvCheck.problems(pair)));
        if (problems.stream().noneMatch(Problem::refused)) {
            problems.addAll(PairsAgree.problems(colour));
            problems.addAll(CoarseDigits.problems(colour));
        }
        return problems;
    }
}
