package covewalk.report.page;

import covewalk.plot.Svg;
import covewalk.plot.VerdictMark;
import covewalk.report.punch.CommonReels;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.PunchWords;
import covewalk.report.punch.StateWords;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.verdict.Fault;
import covewalk.verdict.claim.Allowances;
import covewalk.words.ClaimWords;
import covewalk.words.LabelRow;
import covewalk.words.NoteWords;
import covewalk.words.ReelWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One item as it is printed.
 *
 * @param mark SVG of the verdict's mark
 * @param where range and feed
 * @param measured figures
 * @param todo what is suspected, what to check first, what to do
 * @param reels names over the label columns
 * @param notes what the makers' claims allow, and what bears on this verdict
 * @param caution for touching wiring; empty where nobody has to
 * @param recorded by column of the log
 */
public record ItemPage(int number, String mark, String verdict, String place, String priority, List<String> where, List<Fact> measured,
                List<Fact> todo, List<String> reels, List<LabelRow> labels, List<String> notes, String caution,
                Map<String, String> recorded) {

    /** What is recorded of it under this column of the log; empty where there is room to write. */
    String recorded(String column) {
        return recorded.getOrDefault(column, "");
    }

    /** Makes items for a page. */
    static final class Maker {

        private static final int LONGEST = 60;

        private final Words words;
        private final PunchWords punch;
        private final Limits limits;
        private final CommonReels common;
        private final ReelWords reelWords;
        private final NoteWords notes;
        private final StateWords states;
        private final PunchList list;

        Maker(Words words, PunchWords punch, PunchList list) {
            this.words = words;
            this.punch = punch;
            this.limits = list.judgement().survey().limits();
            this.common = new CommonReels(list.items());
            this.reelWords = new ReelWords(words);
            this.notes = new NoteWords(words);
            this.states = new StateWords(words);
            this.list = list;
        }

        ItemPage item(PunchItem item) {
            Fault fault = item.fault();
            return new ItemPage(item.number(), Svg.of(VerdictMark.of(fault.verdict(), Optional.of(fault.difference())).picture(words)),
                    words.verdict(fault.verdict()), punch.place(item),
                    words.text("item.priority", punch.priority(item), punch.priorityReason(item)),
                    Stream.of(punch.range(item), punch.feed(item)).filter(part -> !part.isEmpty()).toList(), measured(item),
                    todo(item), item.reels().stream().map(reel -> Shortened.of(reel.id(), LONGEST)).toList(), labels(item),
                    notes(item), item.touchesWiring() ? words.text("item.caution.electrical") : "", recorded(item));
        }

        private List<String> notes(PunchItem item) {
            return Stream.of(states.before(list, item).stream(), Stream.of(clause(item), punch.standsFor(item), claims(item)), notes.sentences(item.fault().notes()).stream())
                    .flatMap(part -> part).filter(note -> !note.isEmpty()).toList();
        }

        private String clause(PunchItem item) {
            String clause = states.recorded(item.state(), PunchColumn.CLAUSE);
            return clause.isEmpty() ? "" : words.text("item.clause", clause);
        }

        private Map<String, String> recorded(PunchItem item) {
            return PunchColumn.STATE.stream().collect(Collectors.toMap(PunchColumn::code, column -> states.recorded(item.state(), column)));
        }

        private List<Fact> measured(PunchItem item) {
            Fault fault = item.fault();
            return List.of(fact("difference", punch.measured(fault)),
                    fact("limit", words.text("item.limit.steps", words.numbers().plain(fault.limitSteps(), 2))),
                    fact("towards", punch.towards(fault)), fact("lux", punch.luxRatio(fault)),
                    fact("confidence", punch.confidence(fault)));
        }

        private List<Fact> todo(PunchItem item) {
            Fault fault = item.fault();
            return List.of(fact("suspected", words.suspicion(fault.hint())), fact("check", words.checkFirst(fault.hint())),
                    fact("do", punch.toDo(item, common)));
        }

        private Fact fact(String label, String text) {
            return new Fact(words.text("item.label." + label), text);
        }

        private List<LabelRow> labels(PunchItem item) {
            if (item.before().isEmpty()) {
                return List.of();
            }
            Reel before = item.before().get();
            return reelWords.sideBySide(before, item.after().orElse(before)).stream()
                    .map(row -> new LabelRow(row.field(), Shortened.of(row.before(), LONGEST), Shortened.of(row.after(), LONGEST),
                            row.differs())).toList();
        }

        private String claims(PunchItem item) {
            return Allowances.between(item.reels(), limits.stepRule()).map(allowance -> new ClaimWords(words).allowance(allowance,
                    item.fault().difference().steps(), item.fault().limitSteps())).orElse("");
        }
    }
}
