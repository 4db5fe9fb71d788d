package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.report.data.PlanJson;
import covewalk.report.data.PunchCsv;
import covewalk.report.data.PunchJson;
import covewalk.report.data.Rfc4180;
import covewalk.report.page.Page;
import covewalk.report.page.PageStyle;
import covewalk.report.page.Pages;
import covewalk.report.page.PunchHtml;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.Sample;
import covewalk.report.text.CheckTable;
import covewalk.report.text.Explanation;
import covewalk.report.text.PlanTable;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import covewalk.verdict.plan.WalkPlan;
import covewalk.words.Language;
import covewalk.words.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Papers for people are German throughout; files for programs say in every language what they say in English. */
class GermanReportTest {

    private static final Words GERMAN = Language.GERMAN.words();
    private static final Words ENGLISH = Language.ENGLISH.words();

    /** Columns and fields of free text; all others are the same in every language. */
    private static final Set<String> FREE_COLUMNS =
            Set.of("suspected", "check_first", "to_do", "priority_reason", "cautions", "stands_also_for", "corrected");
    private static final Set<String> FREE_FIELDS = Set.of("suspected", "checkFirst", "toDo", "priorityReason", "cautions",
            "standsAlsoFor", "decisionRule", "outcome", "evidence", "caution");

    /** Numbers of clauses and standards, which have a point everywhere, and what the samples' people wrote. */
    private static final Pattern NAMES = Pattern.compile("\\bC78\\.377|19(10|26)\\.\\d+|26 51 00, 2\\.3|clauses 4\\.2 and 4\\.3");

    /** Single words of English sentences that German papers hold for another reason: a publication, and invented names. */
    private static final Set<String> SHARED = Set.of("INDG455", "Inspector", "Steps", "Reading", "readings", "round", "side");

    private static Judgement demo;

    @BeforeAll
    static void judge() throws IOException {
        ReadSurvey read = SurveyFolder.at(Path.of("survey-demo", "reading-rooms")).read();
        demo = new Judge().judge(read.survey().orElseThrow(), read.log());
    }

    /** Every paper, of a sample with every verdict in it and of the demonstration, as plain text. */
    private static Stream<String> papers() {
        return Stream.of(page(Sample.judgement()), page(demo), new CheckTable(GERMAN).of(Sample.judgement(), List.of()),
                new CheckTable(GERMAN).of(demo, List.of()), new PlanTable(GERMAN).of(WalkPlan.of(demo)), explanations());
    }

    private static String page(Judgement judgement) {
        String html = html(judgement);
        return html.replaceAll("(?s)<style>.*?</style>|<table class=\"figures readings\">.*?</table>", " ").replaceAll("<[^>]*>", " ").replace("&#39;", "'").replace("&amp;", "&");
    }

    /** What was typed keeps its point: the list of readings is left out above. */
    private static String html(Judgement judgement) {
        StringWriter out = new StringWriter();
        new PunchHtml().write(Page.of(PunchList.of(judgement), Pages.audit(judgement, "7F3K-22QD"), PageStyle.USUAL, GERMAN), out);
        return out.toString();
    }

    private static String explanations() {
        return demo.coves().stream().map(cove -> new Explanation(GERMAN).of(demo, cove, cove.cove().lengthM() / 2).orElseThrow())
                .collect(Collectors.joining());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("papers")
    void noPaperHoldsAnEnglishSentence(String paper) {
        String text = paper.replaceAll("\\s+", " ");
        Set<String> found = pieces(ENGLISH);
        found.removeAll(pieces(GERMAN));
        found.removeAll(SHARED);
        found.removeIf(piece -> !Pattern.compile("(?<![\\w-])" + Pattern.quote(piece) + "(?![\\w-])").matcher(text).find());
        assertEquals(Set.of(), found);
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("papers")
    void everyNumberHasAComma(String paper) {
        Matcher points = Pattern.compile("\\S*\\d\\.\\d\\S*").matcher(NAMES.matcher(paper.replaceAll("\\s+", " ")).replaceAll(""));
        assertFalse(points.find(), () -> points.group());
        assertTrue(Pattern.compile("\\d,\\d").matcher(paper).find());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("papers")
    void tablesFitAHundredColumns(String paper) {
        boolean table = !paper.contains("7F3K-22QD");
        assertEquals(List.of(), paper.lines().filter(line -> table && line.length() > 100).toList());
    }

    @Test
    void thePageSaysThatItIsGerman() {
        assertTrue(html(demo).contains("<html lang=\"de\">"));
    }

    @Test
    void theTableForSpreadsheetsDiffersInFreeTextOnly() {
        List<List<String>> german = Rfc4180.rows(new PunchCsv(GERMAN).of(PunchList.of(Sample.judgement())));
        List<List<String>> english = Rfc4180.rows(new PunchCsv(ENGLISH).of(PunchList.of(Sample.judgement())));
        List<String> head = english.get(0);
        assertTrue(head.containsAll(FREE_COLUMNS));
        for (int row = 0; row < english.size(); row++) {
            for (int column = 0; column < head.size(); column++) {
                if (row == 0 || !FREE_COLUMNS.contains(head.get(column))) {
                    assertEquals(english.get(row).get(column), german.get(row).get(column), head.get(column));
                }
            }
        }
        assertNotEquals(english.get(1).get(head.indexOf("suspected")), german.get(1).get(head.indexOf("suspected")));
    }

    @Test
    void thePunchListForProgramsDiffersInFreeTextOnly() throws IOException {
        PunchList list = PunchList.of(Sample.judgement());
        String german = new PunchJson(GERMAN).of(list, List.of(), "");
        assertEquals(withoutFreeText(new PunchJson(ENGLISH).of(list, List.of(), "")), withoutFreeText(german));
        assertTrue(german.contains("\"verdict\" : \"beyond\"") && german.contains("Etikett"), german);
    }

    @Test
    void thePlanForProgramsDiffersInFreeTextOnly() throws IOException {
        WalkPlan plan = WalkPlan.of(demo);
        assertEquals(withoutFreeText(new PlanJson(ENGLISH).of(plan)), withoutFreeText(new PlanJson(GERMAN).of(plan)));
    }

    private static JsonNode withoutFreeText(String json) throws IOException {
        JsonNode all = JsonMapper.builder().build().readTree(json);
        all.findParents("suspected").forEach(item -> ((ObjectNode) item).remove(FREE_FIELDS));
        return ((ObjectNode) all).remove(FREE_FIELDS);
    }

    /** What stands between the slots of all sentences, as far as it is long enough to be told from other text. */
    private static Set<String> pieces(Words words) {
        ResourceBundle bundle = ResourceBundle.getBundle("covewalk.words.sentences", words.locale(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        return bundle.keySet().stream().flatMap(key -> Stream.of(bundle.getString(key).split("\\{\\d}")))
                .map(piece -> piece.replaceAll("^\\W+|[\\s,;:(]+$", "")).filter(piece -> piece.matches(".*\\p{L}{4}.*"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
