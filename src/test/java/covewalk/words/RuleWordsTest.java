package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.StepRule;
import covewalk.report.punch.Sample;
import covewalk.survey.Limits;
import covewalk.survey.Limits.ErrorPer;
import covewalk.verdict.Judgement;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RuleWordsTest {

    private final RuleWords words = new RuleWords(Words.english());

    @Test
    void aLimitThatNoClauseSetsIsTheInspectorsOwn() {
        assertEquals("2.5 steps between neighbours, chosen by the inspector, not a contract limit",
                words.limits(limits("", StepRule.UV_CIRCLE, ErrorPer.JOINT)));
    }

    @Test
    void aLimitNamesTheClauseThatSetsIt() {
        assertEquals("2.5 steps between neighbours, set by clause 2.3", words.limits(limits("clause 2.3", StepRule.UV_CIRCLE, ErrorPer.JOINT)));
    }

    @Test
    void theRuleIsOneSentenceWithItsRateAndItsSteps() {
        String rule = words.decision(Sample.judgement());
        assertEquals(rule.length() - 1, rule.replaceAll("(?<=\\d)\\.(?=\\d)", "x").indexOf('.'), rule);
        assertTrue(rule.contains("95 %") && rule.contains("5 %") && rule.contains("0.0011") && rule.contains("each place judged by itself"), rule);
    }

    @Test
    void namesTheEllipseThatWasUsed() {
        String rule = words.decision(with(limits("", StepRule.ELLIPSE, ErrorPer.SURVEY)));
        assertTrue(rule.contains("SDCM") && rule.contains("IEC 60081") && rule.contains("Holm"), rule);
        // the standard colour nearest to the sample's target of 2700 K is the one called F 2700 (IEC 60081, table in the library)
        assertTrue(rule.contains("2700"), rule);
    }

    private static Judgement with(Limits limits) {
        Judgement sample = Sample.judgement();
        return new Judgement(sample.survey().with(limits), sample.coves(), sample.notes(), sample.claims());
    }

    private static Limits limits(String setBy, StepRule rule, ErrorPer per) {
        return new Limits(2.5, OptionalDouble.empty(), setBy, rule, 0.05, per);
    }
}
