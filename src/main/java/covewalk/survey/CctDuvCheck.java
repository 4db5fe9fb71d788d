package covewalk.survey;

import covewalk.colour.CctDuv;
import java.util.ArrayList;
import java.util.List;

/** CCT and Duv as typed. */
final class CctDuvCheck {

    private CctDuvCheck() {
    }

    static List<Problem> problems(TypedPair pair) {
        List<Problem> problems = new ArrayList<>();
        checkCct(pair.first(), problems);
        checkDuv(pair.second(), problems);
        if (problems.stream().noneMatch(Problem::refused) && !TypedColour.cctDuvOf(pair).isReal()) {
            problems.clear();
            problems.add(Problem.refusal("colour.duv.not-real", pair.first().text(), pair.second().text()).inColumn("duv"));
        }
        return problems;
    }

    /** Whether {@link #problems} has nothing to say. */
    static boolean isUsual(TypedPair pair) {
        double kelvin = pair.first().value();
        return kelvin >= UsualWhite.LEAST_CCT_K && kelvin <= UsualWhite.MOST_CCT_K
                && Math.abs(pair.second().value()) <= UsualWhite.MOST_DUV && TypedColour.cctDuvOf(pair).isReal();
    }

    private static void checkCct(Typed cct, List<Problem> problems) {
        double kelvin = cct.value();
        if (kelvin < CctDuv.MIN_CCT_K || kelvin > CctDuv.MAX_CCT_K) {
            problems.add(Problem.refusal("colour.cct.range", cct.text()).inColumn("cct_k"));
        } else if (kelvin < UsualWhite.LEAST_CCT_K || kelvin > UsualWhite.MOST_CCT_K) {
            problems.add(Problem.warning("colour.cct.unusual", cct.text()).inColumn("cct_k"));
        }
    }

    private static void checkDuv(Typed duv, List<Problem> problems) {
        double size = Math.abs(duv.value());
        if (size >= 1) {
            problems.add(Problem.refusal("colour.duv.whole", duv.text()).inColumn("duv"));
        } else if (size > CctDuv.MAX_DUV) {
            problems.add(Problem.refusal("colour.duv.range", duv.text()).inColumn("duv"));
        } else if (size > UsualWhite.MOST_DUV) {
            problems.add(Problem.warning("colour.duv.unusual", duv.text()).inColumn("duv"));
        }
    }
}
