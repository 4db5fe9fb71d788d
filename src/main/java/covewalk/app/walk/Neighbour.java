package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.colour.Towards;
import covewalk.verdict.Difference;
import covewalk.verdict.StationPair;
import covewalk.verdict.limit.Verdict;
import java.util.Optional;

/**
 * What is said at once of a station and the one before it.
 *
 * @param says one sentence
 * @param verdict not read where there is nothing to compare
 */
record Neighbour(String says, Verdict verdict, Optional<Difference> difference) {

    static final Neighbour NONE = plain("");

    static Neighbour plain(String says) {
        return new Neighbour(says, Verdict.NOT_READ, Optional.empty());
    }

    static Neighbour of(StationPair pair, double limitSteps, Texts texts) {
        String steps = texts.numbers().fixed(pair.difference().steps(), 1);
        String limit = texts.numbers().plain(limitSteps, 2);
        Towards towards = pair.difference().towards();
        boolean same = towards.along() == Towards.Along.SAME && towards.across() == Towards.Across.SAME;
        String far = same ? texts.get("neighbour.same") : texts.get("neighbour.steps", steps, texts.words().towards(towards));
        return new Neighbour(texts.get("neighbour." + pair.verdict().code(), far, limit), pair.verdict(), Optional.of(pair.difference()));
    }
}
