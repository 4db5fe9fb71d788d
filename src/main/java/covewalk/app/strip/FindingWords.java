package covewalk.app.strip;

import covewalk.app.text.LengthWords;
import covewalk.app.text.Texts;
import covewalk.verdict.Difference;
import covewalk.words.Numbers;
import covewalk.words.Shortened;
import covewalk.words.Words;

/** What was found at a place, in words and with its numbers. */
public final class FindingWords {

    private static final int LONGEST = 60;

    private final Texts texts;
    private final Words words;
    private final Numbers numbers;
    private final LengthWords lengths;

    /** @param feet whether positions lead with feet and inches */
    public FindingWords(Texts texts, boolean feet) {
        this.texts = texts.of(FindingWords.class);
        this.words = texts.words();
        this.numbers = texts.numbers();
        this.lengths = new LengthWords(numbers, () -> feet);
    }

    public LengthWords lengths() {
        return lengths;
    }

    /** As "Joint at 5.00 m"; what lies along a reel by both its ends. */
    public String place(Finding finding) {
        String kind = words.kind(finding.kind());
        String where = finding.spreads() ? texts.get("from", kind, lengths.of(finding.fromM()), lengths.of(finding.toM()))
                : texts.get("at", kind, lengths.of(finding.positionM()));
        return where.substring(0, 1).toUpperCase(words.locale()) + where.substring(1);
    }

    /** The same place in the other unit. */
    public String placeInOther(Finding finding) {
        return finding.spreads() ? words.text("item.from-to", lengths.other(finding.fromM()), lengths.other(finding.toM()))
                : lengths.other(finding.positionM());
    }

    /** As "R1 | R2". */
    public String reels(Finding finding) {
        return Shortened.of(String.join(" | ", finding.reels()), LONGEST);
    }

    /** As "3.40 steps, standard uncertainty 0.22". */
    public String measured(Difference difference) {
        return words.text("item.measured", numbers.steps(difference.steps()), numbers.steps(difference.standardUncertaintySteps()));
    }

    /** As "far side warmer, pinker". */
    public String towards(Finding finding, Difference difference) {
        return words.text("item.towards." + finding.kind().code(), words.towards(difference.towards()));
    }

    /** All of it in one sentence, as beside the strip. */
    public String inOneLine(Finding finding) {
        String measured = finding.difference().map(difference -> texts.get("measured", numbers.steps(difference.steps()),
                numbers.steps(difference.standardUncertaintySteps()), towards(finding, difference), numbers.plain(finding.limitSteps(), 2)))
                .orElseGet(() -> words.toSettle(finding.settle()));
        return texts.get("finding", place(finding), reels(finding), words.verdict(finding.verdict()), measured);
    }
}
