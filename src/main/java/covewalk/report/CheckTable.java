package covewalk.report;

import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.util.List;

/** The verdicts as a table of plain text, for a terminal. */
public final class CheckTable {

    private final Words words;

    public CheckTable(Words words) {
        this.words = words;
    }

    /**
     * @param warnings on the survey, in words, one sentence each
     * @return lines ending in a line feed; the last counts beyond, unsettled, within and not read
     */
    public String of(Judgement judgement, List<String> warnings) {
        return words.counts(judgement) + "\n";
    }
}
