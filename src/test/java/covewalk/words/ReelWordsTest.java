package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ReelWordsTest {

    private final ReelWords words = new ReelWords(Words.english());

    @Test
    void marksWhatDiffersAndLeavesOutWhatNeitherLabelSays() {
        List<LabelRow> rows = words.sideBySide(reel("R1", "B3", "4471", "0012", 3), reel("R2", "B4", "4471", "0013", 3));
        assertEquals(List.of(new LabelRow("nominal CCT", "2700 K", "2700 K", false), new LabelRow("bin", "B3", "B4", true),
                new LabelRow("lot", "4471", "4471", false), new LabelRow("serial", "0012", "0013", false)), rows);
    }

    @Test
    void doesNotCallAMissingLabelADifference() {
        assertTrue(words.sideBySide(reel("R1", "B3", "", "", 3), reel("R2", "", "", "", 3)).stream().noneMatch(LabelRow::differs));
    }

    @Test
    void saysSoWhereNoLabelIsNoted() {
        Reel silent = new Reel("R2", "", "", "", OptionalInt.empty(), "", "", "", "", "", OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty());
        assertEquals("R2: no label noted", words.label(silent));
    }

    private static Reel reel(String id, String bin, String lot, String serial, double claimed) {
        return new Reel(id, "", "", "", OptionalInt.of(2700), bin, lot, serial, "", "", OptionalDouble.of(5),
                OptionalDouble.of(claimed), Optional.empty());
    }
}
