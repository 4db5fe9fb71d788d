package covewalk.survey;

import java.util.ArrayList;
import java.util.List;

/** Which reel lights which stretch of one cove: no two the same, none outside, no gap unseen. */
final class PlacementCheck {

    /** Two ends measured to the millimetre may seem to overlap by one. */
    static final double TAPE_M = 0.0015;
    /** A longer gap is seen as dark and was meant by somebody (common practice, no source). */
    private static final double GAP_M = 0.3;

    private final ReelsById reels;
    private final Cove cove;
    private final String path;
    private final List<Problem> problems = new ArrayList<>();

    /** @param path the cove's place in the description */
    PlacementCheck(ReelsById reels, Cove cove, String path) {
        this.reels = reels;
        this.cove = cove;
        this.path = path;
    }

    List<Problem> problems() {
        if (cove.placements().isEmpty()) {
            problems.add(Problem.warning("survey.no-placements", cove.id()).inColumn(path + ".placements"));
            return problems;
        }
        for (int i = 0; i < cove.placements().size(); i++) {
            checkOne(cove.placements().get(i), path + ".placements[" + i + "]");
        }
        checkNeighbours();
        checkEnds();
        return problems;
    }

    private void checkOne(Placement placement, String at) {
        if (reels.find(placement.reel()).isEmpty()) {
            problems.add(Problem.refusal("survey.no-reel", placement.reel()).inColumn(at + ".reel"));
        }
        if (placement.toM() > cove.lengthM() + TAPE_M) {
            problems.add(Problem.refusal("survey.placement-outside", ColourDigits.metres(placement.toM()),
                    ColourDigits.metres(cove.lengthM())).inColumn(at + ".toM"));
        }
    }

    private void checkNeighbours() {
        double reached = cove.placements().get(0).toM();
        for (int i = 1; i < cove.placements().size(); i++) {
            Placement next = cove.placements().get(i);
            String column = path + ".placements[" + i + "].fromM";
            if (next.fromM() < reached - TAPE_M) {
                problems.add(Problem.refusal("survey.overlap", ColourDigits.metres(next.fromM()),
                        ColourDigits.metres(reached)).inColumn(column));
            } else {
                checkGap(reached, next.fromM(), column);
            }
            reached = Math.max(reached, next.toM());
        }
    }

    /** A closed cove's ends meet, so what is dark at both counts as one gap. */
    private void checkEnds() {
        double first = cove.placements().get(0).fromM();
        double last = cove.placements().stream().mapToDouble(Placement::toM).max().orElseThrow();
        double dark = first + Math.max(0, cove.lengthM() - last);
        if (cove.closed() && dark > GAP_M) {
            problems.add(Problem.warning("survey.gap-closing", ColourDigits.metres(dark)).inColumn(path + ".placements"));
        } else if (!cove.closed()) {
            checkGap(0, first, path + ".placements[0].fromM");
            checkGap(last, cove.lengthM(), path + ".placements[" + (cove.placements().size() - 1) + "].toM");
        }
    }

    private void checkGap(double from, double to, String column) {
        if (to - from > GAP_M) {
            problems.add(Problem.warning("survey.gap", ColourDigits.metres(from), ColourDigits.metres(to)).inColumn(column));
        }
    }
}
