package covewalk.plot;

import covewalk.colour.UvPrime;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Stretch;
import java.util.List;

/** A cove's mean colour by length, over the stretches found with its first set-up: only those can be compared. */
final class CoveMean {

    private final List<Stretch> stretches;

    CoveMean(CoveJudgement cove) {
        String setUp = cove.stretches().isEmpty() ? "" : cove.stretches().get(0).setUp();
        stretches = cove.stretches().stream().filter(stretch -> stretch.setUp().equals(setUp)).toList();
    }

    List<Stretch> stretches() {
        return stretches;
    }

    /** Of a cove with at least one stretch. */
    UvPrime colour() {
        double length = 0;
        double u = 0;
        double v = 0;
        for (Stretch stretch : stretches) {
            double part = stretch.toM() - stretch.fromM();
            UvPrime middle = stretch.line().at(stretch.middleM());
            length += part;
            u += part * middle.u();
            v += part * middle.v();
        }
        return new UvPrime(u / length, v / length);
    }

    /** The largest distance of a stretch's end from the mean, in u'v'. */
    double farthest() {
        UvPrime mean = colour();
        return stretches.stream()
                .flatMap(stretch -> List.of(stretch.line().at(stretch.fromM()), stretch.line().at(stretch.toM())).stream())
                .mapToDouble(colour -> Math.hypot(colour.u() - mean.u(), colour.v() - mean.v())).max().orElse(0);
    }
}
