package covewalk.report.page;

import covewalk.colour.UvPrime;
import covewalk.verdict.evidence.ReferenceSpot;
import covewalk.words.Shortened;
import covewalk.words.Words;

/** What a place read again and again says of meter and light. */
final class ReferenceSpotWords {

    private static final int LONGEST = 40;

    private final Words words;

    ReferenceSpotWords(Words words) {
        this.words = words;
    }

    String sentence(ReferenceSpot spot) {
        double steps = Math.hypot(spot.du(), spot.dv()) / UvPrime.STEP;
        String says = spot.drifts() ? words.text("reference.drifts") : spot.tells() ? words.text("reference.steady")
                : words.text("reference.too-few");
        return words.text("reference.spot", words.lengths().first(spot.spot().positionM()), Shortened.of(spot.spot().setUp(), LONGEST),
                words.numbers().fixed(spot.visits(), 0), words.numbers().steps(steps), says);
    }
}
