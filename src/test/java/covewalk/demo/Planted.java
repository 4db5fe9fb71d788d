package covewalk.demo;

import covewalk.survey.Joint;
import java.util.List;

/**
 * A planted place and what a fair judgement says of it (a row of {@code planted.csv}).
 *
 * @param fromM the first metre at which it may be reported
 * @param toM the last one
 * @param reels datum's side first
 * @param verdict its word in files
 * @param steps true difference
 */
record Planted(String cove, String kind, double fromM, double toM, List<String> reels, String verdict, double steps) {

    static List<Planted> all() {
        return Table.read("planted.csv", Planted::of);
    }

    private static Planted of(Table.Row row) {
        return new Planted(row.text("cove"), row.text("kind"), row.number("from_m"), row.number("to_m"),
                row.words("reels"), row.text("verdict"), row.number("steps"));
    }

    boolean isJoint() {
        return kind.equals("joint");
    }

    boolean isFault() {
        return !verdict.equals("within");
    }

    /** Whether it is this joint. */
    boolean isAt(String otherCove, Joint joint) {
        return isJoint() && cove.equals(otherCove) && Math.abs(joint.positionM() - fromM) < 1e-9
                && reels.equals(List.of(joint.before().reel(), joint.after().reel()));
    }
}
