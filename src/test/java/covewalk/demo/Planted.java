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
 * @param hint its word in files
 */
record Planted(String cove, String kind, double fromM, double toM, List<String> reels, String verdict, double steps,
               String hint) {

    /** Four standard uncertainties of the difference of two places that were read once each, in steps. */
    private static final double FAR_OFF = 1.6;

    static List<Planted> all() {
        return Table.read("planted.csv", Planted::of);
    }

    private static Planted of(Table.Row row) {
        return new Planted(row.text("cove"), row.text("kind"), row.number("from_m"), row.number("to_m"),
                row.words("reels"), row.text("verdict"), row.number("steps"), row.text("hint"));
    }

    boolean isJoint() {
        return kind.equals("joint");
    }

    boolean isFault() {
        return !verdict.equals("within");
    }

    /** Whether what was found is this place: of the same kind and verdict with the same hint, and not outside it. */
    boolean holds(Planted found) {
        return cove.equals(found.cove) && kind.equals(found.kind) && reels.equals(found.reels)
                && verdict.equals(found.verdict) && hint.equals(found.hint) && Math.abs(steps - found.steps) < FAR_OFF
                && found.fromM >= fromM - 1e-9 && found.toM <= toM + 1e-9;
    }

    /** Whether it is this joint. */
    boolean isAt(String otherCove, Joint joint) {
        return isJoint() && cove.equals(otherCove) && Math.abs(joint.positionM() - fromM) < 1e-9
                && reels.equals(List.of(joint.before().reel(), joint.after().reel()));
    }
}
