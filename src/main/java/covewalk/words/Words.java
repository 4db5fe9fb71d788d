package covewalk.words;

import covewalk.colour.Towards;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.Judgement;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sentences of one language, with its numbers. English where a language has no bundle of its own. */
public final class Words {

    private final Locale locale;
    private final Sentences sentences;
    private final Numbers numbers;
    private final Lengths lengths;

    /** Positions and lengths in metres first, as in the files. */
    public Words(Locale locale) {
        this(locale, new Sentences(locale), new Numbers(locale), LengthUnit.M);
    }

    private Words(Locale locale, Sentences sentences, Numbers numbers, LengthUnit first) {
        this.locale = locale;
        this.sentences = sentences;
        this.numbers = numbers;
        this.lengths = new Lengths(numbers, first);
    }

    public static Words english() {
        return new Words(Locale.ENGLISH);
    }

    /** The same with positions and lengths in this unit first. */
    public Words lengthsIn(LengthUnit first) {
        return new Words(locale, sentences, numbers, first);
    }

    public Locale locale() {
        return locale;
    }

    public Numbers numbers() {
        return numbers;
    }

    /** Positions and lengths in the unit that this reader reads first. */
    public Lengths lengths() {
        return lengths;
    }

    /**
     * The sentence of a dotted key.
     *
     * @param details put in for {0}, {1} and so on, numbers already written by {@link #numbers()}
     */
    public String text(String key, String... details) {
        return sentences.text(key, List.of(details));
    }

    /** The sentence of {@code key.one} for 1, else of {@code key.more}, with the count put in for {0}. */
    public String count(String key, long count) {
        return text(key + (count == 1 ? ".one" : ".more"), numbers.fixed(count, 0));
    }

    public String verdict(Verdict verdict) {
        return text("verdict." + verdict.code());
    }

    public String kind(FaultKind kind) {
        return text("kind." + kind.code());
    }

    /** What a pattern is consistent with: a suspicion, never a finding. */
    public String suspicion(Hint hint) {
        return text("hint.suspect." + hint.code());
    }

    /** What to check before anything else. */
    public String checkFirst(Hint hint) {
        return text("hint.check." + hint.code());
    }

    /** As "warmer, pinker"; for two colours alike, that they are. */
    public String towards(Towards towards) {
        String both = Stream.of(towards.along().name(), towards.across().name())
                .filter(word -> !word.equals("SAME"))
                .map(word -> text("towards." + word.toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
        return both.isEmpty() ? text("towards.same") : both;
    }

    /** What stands for further remarks of a kind, after the first few: how many more there are. */
    public String moreAlike(int remarks) {
        return text("remark.more-alike", numbers.fixed(remarks, 0));
    }

    /** What more reading would do: how many readings a side, or why none helps; nothing where it is settled. */
    public String toSettle(Settle settle) {
        if (settle.readings().isEmpty()) {
            return text("settle.not." + settle.whyNot().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
        int readings = settle.readings().getAsInt();
        return readings == 0 ? "" : count("settle.readings", readings);
    }

    /** The same for a column of a table, as in "+6 a side". */
    public String toSettleInShort(Settle settle, Verdict verdict) {
        if (settle.readings().isEmpty()) {
            return text("settle.short." + settle.whyNot().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
        int readings = settle.readings().getAsInt();
        if (readings == 0) { // unsettled all the same where the whole survey shares one error rate
            return verdict == Verdict.UNSETTLED ? text("settle.short.again") : "";
        }
        return text("settle.short.readings", numbers.fixed(readings, 0));
    }

    /** How many places are beyond, unsettled, within and not read. */
    public String counts(Judgement judgement) {
        return text("counts", whole(judgement, Verdict.BEYOND), whole(judgement, Verdict.UNSETTLED),
                whole(judgement, Verdict.WITHIN), whole(judgement, Verdict.NOT_READ));
    }

    private String whole(Judgement judgement, Verdict verdict) {
        return numbers.fixed(judgement.count(verdict), 0);
    }
}
