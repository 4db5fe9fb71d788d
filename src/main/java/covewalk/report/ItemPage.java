package covewalk.report;

import covewalk.plot.Svg;
import covewalk.plot.VerdictMark;
import covewalk.survey.Limits;
import covewalk.verdict.Fault;
import covewalk.verdict.claim.Allowances;
import covewalk.words.ClaimWords;
import covewalk.words.LabelRow;
import covewalk.words.NoteWords;
import covewalk.words.ReelWords;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A punch item as it is printed.
 *
 * @param mark SVG of the verdict's mark
 * @param where cove, datum, range, height and feed
 * @param measured figures
 * @param todo what is suspected, what to check first, what to do
 * @param reels names over the label columns
 * @param claims what the makers' claims allow; may be empty
 */
record ItemPage(int number, String mark, String verdict, String place, String priority, String priorityReason,
                List<String> where, List<Fact> measured, List<Fact> todo, List<String> reels, List<LabelRow> labels,
                String claims, List<String> notes, List<String> cautions) {

    /** Makes items for a page. */
    static final class Maker {

        private static final int LONGEST = 60;

        private final Words words;
        private final PunchWords punch;
        private final ReelWords reelWords;
        private final RuleWords rules;
        private final NoteWords notes;

        Maker(Words words) {
            this.words = words;
            this.punch = new PunchWords(words);
            this.reelWords = new ReelWords(words);
            this.rules = new RuleWords(words);
            this.notes = new NoteWords(words);
        }

        ItemPage item(PunchItem item, Limits limits) {
            Fault fault = item.fault();
            return new ItemPage(item.number(), Svg.of(VerdictMark.of(fault.verdict(), Optional.of(fault.difference())).picture(words)),
                    words.verdict(fault.verdict()), punch.place(item), punch.priority(item), punch.priorityReason(item),
                    where(item), measured(fault, limits), todo(fault), item.reels().stream().map(reel -> Shortened.of(reel.id(), LONGEST)).toList(),
                    labels(item), claims(item, limits), notes(item), punch.cautions(item));
        }

        private List<String> notes(PunchItem item) {
            List<String> also = item.alike().isEmpty() ? List.of() : List.of(punch.standsFor(item));
            return Stream.concat(also.stream(), notes.sentences(item.fault().notes()).stream()).toList();
        }

        private List<String> where(PunchItem item) {
            return Stream.of(punch.cove(item.cove()), words.text("item.datum", punch.datum(item.cove())),
                    punch.range(item), punch.height(item.cove()), punch.feed(item))
                    .filter(part -> !part.isEmpty()).toList();
        }

        private List<Fact> measured(Fault fault, Limits limits) {
            return List.of(fact("difference", punch.measured(fault)),
                    fact("limit", words.text("item.limit.steps", words.numbers().plain(fault.limitSteps(), 2), rules.setBy(limits))),
                    fact("towards", punch.towards(fault)), fact("lux", punch.luxRatio(fault)),
                    fact("confidence", punch.confidence(fault)));
        }

        private List<Fact> todo(Fault fault) {
            return List.of(fact("suspected", words.suspicion(fault.hint())), fact("check", words.checkFirst(fault.hint())),
                    fact("do", punch.toDo(fault)));
        }

        private Fact fact(String label, String text) {
            return new Fact(words.text("item.label." + label), text);
        }

        private List<LabelRow> labels(PunchItem item) {
            if (item.before().isEmpty()) {
                return List.of();
            }
            return reelWords.sideBySide(item.before().get(), item.after().orElse(item.before().get())).stream()
                    .map(row -> new LabelRow(row.field(), Shortened.of(row.before(), LONGEST), Shortened.of(row.after(), LONGEST),
                            row.differs())).toList();
        }

        private String claims(PunchItem item, Limits limits) {
            return Allowances.between(item.reels(), limits.stepRule()).map(allowance -> new ClaimWords(words).allowance(allowance,
                    item.fault().difference().steps(), item.fault().limitSteps())).orElse("");
        }
    }
}
