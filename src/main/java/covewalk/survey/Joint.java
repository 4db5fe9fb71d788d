package covewalk.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * Where one placement follows another. Differences run from {@code before} to {@code after}.
 *
 * @param before the placement on the datum's side; at the closing joint of a closed cove, the last one
 * @param after the placement on the far side; at the closing joint, the first one
 * @param closing whether here a closed cove's end meets its start
 */
public record Joint(Placement before, Placement after, boolean closing) {

    static List<Joint> of(Cove cove) {
        List<Placement> row = cove.placements();
        List<Joint> joints = new ArrayList<>();
        for (int i = 1; i < row.size(); i++) {
            joints.add(new Joint(row.get(i - 1), row.get(i), false));
        }
        if (cove.closed() && !row.isEmpty()) {
            joints.add(new Joint(row.get(row.size() - 1), row.get(0), true));
        }
        return joints;
    }

    /** Where it is, m from the datum: the middle of a gap; a closing joint stands at the end of the last placement. */
    public double positionM() {
        return closing ? before.toM() : (before.toM() + after.fromM()) / 2;
    }

    /**
     * The length without light between the two, m; 0 where they touch.
     *
     * @param coveLengthM needed at a closing joint, where the gap runs on through the end of the cove
     */
    public double gapM(double coveLengthM) {
        return closing ? Math.max(0, coveLengthM - before.toM()) + after.fromM()
                : Math.max(0, after.fromM() - before.toM());
    }
}
