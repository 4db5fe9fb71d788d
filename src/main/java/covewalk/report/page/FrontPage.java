package covewalk.report.page;

import covewalk.plot.Svg;
import covewalk.plot.VerdictMark;
import covewalk.report.punch.CommonReels;
import covewalk.report.punch.NextSteps;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.PunchWords;
import covewalk.report.punch.StateWords;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.survey.Visit;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The first page, from which alone one must be able to decide rightly.
 *
 * @param facts site, visit, meter, limit and rule
 * @param counts how many places have each verdict
 * @param next what to do next, in order
 * @param overview an item a row
 * @param gone items that have a number and are not found any more, a sentence each
 */
public record FrontPage(List<Fact> facts, List<Count> counts, List<Worst> worst, List<String> next, List<Row> overview,
                 List<String> gone) {

    /** How many places have a verdict, with its mark. */
    record Count(String mark, String text) {
    }

    /** One of the worst items, with its number to look it up by. */
    public record Worst(int item, String label, String text) {
    }

    /** An item in a row, to be ticked off. */
    record Row(int item, String cove, String position, String reels, String mark, String steps, String toDo) {
    }

    /** Makes the first page. */
    static final class Maker {

        private static final int LONGEST = 300;
        private static final int LONGEST_CELL = 40;
        private static final int WORST = 3;

        private final Words words;
        private final PunchWords punch;

        Maker(Words words, PunchWords punch) {
            this.words = words;
            this.punch = punch;
        }

        FrontPage of(PunchList list) {
            CommonReels common = new CommonReels(list.items());
            return new FrontPage(facts(list.judgement()), counts(list.judgement()),
                    list.worst(WORST).stream().map(this::worst).toList(), new NextSteps(words).of(list),
                    new LazyList<>(list.items(), item -> row(item, common)),
                    new LazyList<>(list.gone(), item -> new StateWords(words).inShort(list, item)));
        }

        private List<Fact> facts(Judgement judgement) {
            Survey survey = judgement.survey();
            RuleWords rules = new RuleWords(words);
            List<Fact> facts = new ArrayList<>();
            facts.add(fact("address", noted(survey.site().address())));
            facts.add(fact("visit", visit(survey.visit())));
            facts.add(fact("inspector", noted(survey.visit().inspector())));
            for (SetUp setUp : survey.setUps()) {
                facts.add(fact("meter", punch.meter(setUp)));
            }
            facts.add(fact("limit", rules.limits(survey.limits())));
            facts.add(fact("rule", rules.decision(judgement)));
            return facts;
        }

        private String visit(Visit visit) {
            String date = visit.date().map(Object::toString).orElseGet(() -> words.text("page.no-date"));
            String purpose = visit.purpose().map(why -> words.text("purpose." + why.code())).orElseGet(() -> words.text("reel.not-noted"));
            String on = visit.minutesOn().isPresent() ? words.numbers().fixed(visit.minutesOn().getAsInt(), 0) + " min"
                    : words.text("reel.not-noted");
            return words.text("page.visit", date, purpose, on);
        }

        private String noted(String text) {
            return text.isBlank() ? words.text("reel.not-noted") : Shortened.of(text, LONGEST);
        }

        private Fact fact(String label, String text) {
            return new Fact(words.text("page.label." + label), text);
        }

        private List<Count> counts(Judgement judgement) {
            return Stream.of(Verdict.BEYOND, Verdict.UNSETTLED, Verdict.WITHIN, Verdict.NOT_READ)
                    .map(verdict -> new Count(Svg.of(VerdictMark.of(verdict, Optional.empty()).picture(words)),
                            words.text("page.count", words.numbers().fixed(judgement.count(verdict), 0), words.verdict(verdict))))
                    .toList();
        }

        private Worst worst(PunchItem item) {
            return new Worst(item.number(), words.text("page.item", words.numbers().fixed(item.number(), 0)),
                    words.text("page.worst", words.text("item.steps", words.numbers().steps(item.fault().difference().steps())),
                            words.verdict(item.fault().verdict()),
                            words.numbers().steps(item.fault().difference().standardUncertaintySteps()),
                            punch.timesTheLimit(item), punch.place(item), punch.cove(item.cove())));
        }

        private Row row(PunchItem item, CommonReels common) {
            return new Row(item.number(), Shortened.of(item.cove().id(), LONGEST_CELL), punch.placeInShort(item),
                    item.reels().stream().map(Reel::id).map(id -> Shortened.of(id, LONGEST_CELL)).collect(Collectors.joining(" | ")),
                    Svg.of(VerdictMark.of(item.fault().verdict(), Optional.of(item.fault().difference())).picture(words)),
                    words.numbers().steps(item.fault().difference().steps()),
                    common.of(item).map(reel -> words.text("item.short.common-reel", Shortened.of(reel, LONGEST_CELL)))
                            .orElseGet(() -> punch.toDoInShort(item.fault())));
        }
    }
}
