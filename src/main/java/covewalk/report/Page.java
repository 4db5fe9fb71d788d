package covewalk.report;

import covewalk.plot.Svg;
import covewalk.plot.VerdictMark;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.survey.Visit;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import covewalk.words.NoteWords;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The punch list as it is printed, all of it in words.
 *
 * @param facts site, visit, meter, limit and rule
 * @param counts how many places have each verdict
 * @param next what to do next, in order
 * @param claims what the labels claim beside what was measured
 * @param remarks what bears on the evidence
 * @param seal the seal's sentence; empty where the survey is not sealed
 */
record Page(Words words, String title, List<Fact> facts, List<Count> counts, List<Worst> worst, List<String> next,
            CautionBox cautions, List<ItemPage> items, List<CovePage> coves, ClaimPage claims, List<String> remarks, List<String> method,
            String seal) {

    private static final int LONGEST = 300;
    private static final int METHOD_SENTENCES = 7;
    private static final int WORST = 3;

    /** How many places have a verdict, with its mark. */
    record Count(String mark, String text) {
    }

    /** One of the worst items, with its number to look it up by. */
    record Worst(int item, String label, String text) {
    }

    String language() {
        return words.locale().toLanguageTag();
    }

    /** The sentence of a key, for headings. */
    String text(String key) {
        return words.text(key);
    }

    static Page of(PunchList list, List<String> warnings, String sealCode, Words words) {
        Judgement judgement = list.judgement();
        Survey survey = judgement.survey();
        ItemPage.Maker items = new ItemPage.Maker(words);
        CovePage.Maker coves = new CovePage.Maker(words);
        return new Page(words, title(survey, words), facts(judgement, words), counts(judgement, words), worst(list, words),
                new NextSteps(words).of(list), CautionBox.of(words),
                list.items().stream().map(item -> items.item(item, survey.limits())).toList(),
                judgement.coves().stream().map(cove -> coves.cove(judgement, cove)).toList(),
                ClaimPage.of(judgement, words),
                Stream.concat(warnings.stream(), new NoteWords(words).sentences(judgement.notes()).stream()).toList(),
                IntStream.rangeClosed(1, METHOD_SENTENCES).mapToObj(i -> words.text("method." + i)).toList(),
                sealCode.isBlank() ? "" : words.text("page.seal", sealCode));
    }

    private static String title(Survey survey, Words words) {
        return survey.site().name().isBlank() ? words.text("page.no-site") : Shortened.of(survey.site().name(), LONGEST);
    }

    private static List<Fact> facts(Judgement judgement, Words words) {
        Survey survey = judgement.survey();
        RuleWords rules = new RuleWords(words);
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("site", words.text("page.site", title(survey, words), noted(survey.site().address(), words)), words));
        facts.add(fact("visit", visit(survey.visit(), words), words));
        facts.add(fact("inspector", noted(survey.visit().inspector(), words), words));
        for (SetUp setUp : survey.setUps()) {
            facts.add(fact("meter", new PunchWords(words).meter(setUp), words));
        }
        facts.add(fact("limit", rules.limits(survey.limits()), words));
        facts.add(fact("rule", rules.decision(judgement), words));
        return facts;
    }

    private static String visit(Visit visit, Words words) {
        String date = visit.date().map(Object::toString).orElseGet(() -> words.text("page.no-date"));
        String purpose = visit.purpose().map(why -> words.text("purpose." + why.code())).orElseGet(() -> words.text("reel.not-noted"));
        String on = visit.minutesOn().isPresent() ? words.numbers().fixed(visit.minutesOn().getAsInt(), 0) + " min"
                : words.text("reel.not-noted");
        return words.text("page.visit", date, purpose, on);
    }

    private static String noted(String text, Words words) {
        return text.isBlank() ? words.text("reel.not-noted") : Shortened.of(text, LONGEST);
    }

    private static Fact fact(String label, String text, Words words) {
        return new Fact(words.text("page.label." + label), text);
    }

    private static List<Count> counts(Judgement judgement, Words words) {
        return Stream.of(Verdict.BEYOND, Verdict.UNSETTLED, Verdict.WITHIN, Verdict.NOT_READ)
                .map(verdict -> new Count(Svg.of(VerdictMark.of(verdict, Optional.empty()).picture(words)),
                        words.text("page.count", words.numbers().fixed(judgement.count(verdict), 0), words.verdict(verdict))))
                .toList();
    }

    private static List<Worst> worst(PunchList list, Words words) {
        PunchWords punch = new PunchWords(words);
        return list.worst(WORST).stream().map(item -> new Worst(item.number(), words.text("page.item", words.numbers().fixed(item.number(), 0)), words.text("page.worst",
                words.text("item.steps", words.numbers().steps(item.fault().difference().steps())),
                words.verdict(item.fault().verdict()),
                words.numbers().steps(item.fault().difference().standardUncertaintySteps()), punch.place(item),
                punch.cove(item.cove())))).toList();
    }
}
