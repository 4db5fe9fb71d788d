package covewalk.app.faults;

import covewalk.app.strip.Finding;
import covewalk.report.text.Explanation;
import covewalk.words.LabelRow;
import java.util.List;

/**
 * All that is said about one finding.
 *
 * @param title what and where, as "Joint at 5.00 m (16 ft 4 3/4 in)"
 * @param sentence how far apart, and what that is against the limit
 * @param where cove, reels, datum, height and feed
 * @param numbers name and figure
 * @param checkFirst a suspicion with what to check, then what to do; a heading and a sentence each
 * @param reels names over the label columns
 * @param labels what the labels say, side by side
 * @param notes what bears on the verdict
 * @param cautions those that apply, in short
 * @param reminders the same in full
 * @param restsOn what it rests on, line by line
 */
record Card(Finding finding, String title, String sentence, List<String> where, List<Line> numbers, List<Line> checkFirst,
            List<String> reels, List<LabelRow> labels, List<String> notes, List<String> cautions, List<Cautions> reminders,
            List<Explanation.Line> restsOn) {

    /** A name and what it is. */
    record Line(String name, String text) {
    }

    /** Cautions of one kind. */
    record Cautions(String group, List<String> sentences) {
    }
}
