package covewalk.survey.file.punch;

import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.SpreadsheetCell;
import java.util.List;

/**
 * Which fault an item's number stands for.
 *
 * @param cove the cove's id
 * @param kind the fault's kind, as in {@code mid-reel}
 * @param positionM where it was found first, m from the datum, to the millimetre
 * @param reels ids of what lies there, datum's side first, as in {@code R1 | R2}
 */
public record PunchPlace(String cove, String kind, double positionM, String reels) {

    private static final double MILLIMETRES = 1000;

    public PunchPlace {
        cove = asRead(cove);
        kind = asRead(kind);
        reels = asRead(reels);
        positionM = Math.rint(positionM * MILLIMETRES) / MILLIMETRES;
    }

    public static PunchPlace of(String cove, String kind, double positionM, List<String> reels) {
        return new PunchPlace(cove, kind, positionM, String.join(" | ", reels));
    }

    /** Whether both are faults of one kind at the same reels, wherever along them. */
    public boolean isLike(PunchPlace other) {
        return cove.equals(other.cove) && kind.equals(other.kind) && reels.equals(other.reels);
    }

    /** As it comes back from the file: an id may hold what a table cannot keep. */
    private static String asRead(String text) {
        return SpreadsheetCell.plain(CsvText.oneLine(text)).strip();
    }
}
