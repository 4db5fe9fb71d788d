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
        this.lengths = new LengthWords(numbers, feet);
    }

    public LengthWords lengths() {
        return lengths;
    }

    /** As "Joint at 5.00 m (16 ft 4 3/4 in)". */
    public String place(Finding finding) {
        return words.text("item.place." + finding.kind().code(), lengths.of(finding.positionM()), lengths.other(finding.positionM()));
    }

    /** As "R1 | R2". */
    public String reels(Finding finding) {
        return Shortened.of(String.join(" | ", finding.reels()), LONGEST);
    }

    /** As "3.40 steps, standard uncertainty 0.22; far side warmer, pinker"; else why there is nothing to compare. */
    public String measured(Finding finding) {
        return finding.difference().map(difference -> measured(difference) + "; " + towards(finding, difference))
                .orElseGet(() -> words.toSettle(finding.settle()));
    }

    public String measured(Difference difference) {
        return words.text("item.measured", numbers.steps(difference.steps()), numbers.steps(difference.standardUncertaintySteps()));
    }

    /** As "far side warmer, pinker". */
    public String towards(Finding finding, Difference difference) {
        return words.text("item.towards." + finding.kind().code(), words.towards(difference.towards()));
    }

    /** All of it in one sentence, as beside the strip. */
    public String inOneLine(Finding finding) {
        String range = finding.toM() - finding.fromM() < 0.005 ? ""
                : " " + texts.get("range", lengths.of(finding.fromM()), lengths.of(finding.toM()));
        return texts.get("finding", place(finding) + range, reels(finding), words.verdict(finding.verdict()), measured(finding),
                numbers.plain(finding.limitSteps(), 2));
    }
}
