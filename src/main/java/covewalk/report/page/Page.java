package covewalk.report.page;

import covewalk.report.punch.Audit;
import covewalk.report.punch.LadderStops;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.PunchWords;
import covewalk.report.punch.WarningWords;
import covewalk.survey.StandingReadings;
import covewalk.survey.Survey;
import covewalk.verdict.Judgement;
import covewalk.verdict.evidence.Evidence;
import covewalk.words.NoteWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The report as it is printed, all of it in words. Stops and coves are made when they are asked for: a long report is
 * never in memory as a whole.
 *
 * @param briefCoves the same in short, for a long PDF
 * @param remarks what bears on the evidence of all coves
 */
public record Page(Words words, PageStyle style, String title, RunningHead head, FrontPage front, CautionBox cautions, List<StopPage> stops,
            List<CovePage> coves, List<CovePage> briefCoves, List<String> remarks, List<String> method, ReadingsPage readings, SealPage seal) {

    private static final int LONGEST = 300;
    /** Columns whose headings name the metre, or do not where feet and inches stand in the cells. */
    private static final Set<String> OF_LENGTHS = Set.of("at", "from-to", "slope");
    private static final int METHOD_SENTENCES = 7;

    public String language() {
        return words.locale().toLanguageTag();
    }

    /** The sentence of a key, for headings. */
    public String text(String key) {
        return words.text(key);
    }

    /** The heading of a column of figures. */
    String column(String name) {
        boolean feet = words.lengths().feetFirst() && OF_LENGTHS.contains(name);
        return words.text((feet ? "cove.column-ft." : "cove.column.") + name);
    }

    public static Page of(PunchList list, Audit audit, PageStyle style, Words language) {
        Words words = language.lengthsIn(style.lengths());
        Judgement judgement = audit.judgement();
        Survey survey = judgement.survey();
        PunchWords punch = new PunchWords(words);
        WarningWords warnings = new WarningWords(words, audit);
        CovePage.Maker coves = coves(audit, words, punch, warnings);
        List<Integer> all = IntStream.range(0, judgement.coves().size()).boxed().toList();
        StopPage.Maker stops = new StopPage.Maker(words, punch, new ItemPage.Maker(words, punch, list));
        return new Page(words, style, title(survey, words), RunningHead.of(survey, audit.sealCode(), words),
                new FrontPage.Maker(words, punch).of(list), CautionBox.of(words),
                new LazyList<>(LadderStops.of(list.items()), stops::stop),
                new LazyList<>(all, i -> coves.cove(i + 1, judgement.coves().get(i))),
                new LazyList<>(all, i -> coves.brief(i + 1, judgement.coves().get(i))),
                Stream.concat(warnings.general().stream(), new NoteWords(words).sentences(judgement.notes()).stream()).toList(),
                IntStream.rangeClosed(1, METHOD_SENTENCES).mapToObj(i -> words.text("method." + i)).toList(),
                new ReadingsPage.Maker(words, survey.firstSetUp().id()).of(audit.log()), SealPage.of(audit, words));
    }

    private static CovePage.Maker coves(Audit audit, Words words, PunchWords punch, WarningWords warnings) {
        Evidence evidence = new Evidence(audit.judgement().survey(), StandingReadings.of(audit.log()), false);
        return new CovePage.Maker(words, punch, audit.judgement(), evidence.spots(), warnings);
    }

    private static String title(Survey survey, Words words) {
        return survey.site().name().isBlank() ? words.text("page.no-site") : Shortened.of(survey.site().name(), LONGEST);
    }
}
