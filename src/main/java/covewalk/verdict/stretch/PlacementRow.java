package covewalk.verdict.stretch;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.SetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The stations of one placement and one set-up.
 *
 * @param stations those that count, from the datum on
 * @param nearJoint those nearer to a joint than twice the path over which the meter averages: they mix two reels
 */
public record PlacementRow(Placement placement, SetUp setUp, List<Station> stations, List<Station> nearJoint) {

    public PlacementRow {
        stations = List.copyOf(stations);
        nearJoint = List.copyOf(nearJoint);
    }

    /** The rows of a cove for one set-up, placement by placement; those without any station are left out. */
    public static List<PlacementRow> of(Cove cove, List<Station> stations, SetUp setUp) {
        double[] joints = cove.joints().stream()
                .flatMapToDouble(joint -> DoubleStream.of(joint.before().toM(), joint.after().fromM()))
                .toArray();
        List<PlacementRow> rows = new ArrayList<>();
        for (Placement placement : cove.placements()) {
            List<Station> inside = stations.stream()
                    .filter(station -> station.setUp().equals(setUp.id()) && placement.covers(station.positionM()))
                    .toList();
            if (!inside.isEmpty()) {
                rows.add(new PlacementRow(placement, setUp,
                        inside.stream().filter(station -> !isNear(station, joints, setUp)).toList(),
                        inside.stream().filter(station -> isNear(station, joints, setUp)).toList()));
            }
        }
        return rows;
    }

    private static boolean isNear(Station station, double[] joints, SetUp setUp) {
        for (double joint : joints) {
            if (Math.abs(station.positionM() - joint) <= 2 * setUp.smearM()) {
                return true;
            }
        }
        return false;
    }
}
