package covewalk.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judge;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Explains places of the demonstration survey, whose faults are known. */
class ExplanationTest {

    private static Judgement judgement;

    @BeforeAll
    static void judge() throws IOException {
        ReadSurvey read = SurveyFolder.at(Path.of("survey-demo", "reading-rooms")).read();
        judgement = new Judge().judge(read.survey().orElseThrow(), read.log());
    }

    private static String explained(int cove, double atM) {
        return new Explanation(Words.english()).of(judgement, judgement.coves().get(cove), atM).orElseThrow()
                .replaceAll("\\s+", " ");
    }

    @Test
    void saysWhatWasComparedAndByWhichRule() {
        String text = explained(0, 9.6);

        assertTrue(text.startsWith("Cove C1, 10.00 m (32 ft 9 3/4 in), joint, R2 | R3: unsettled."), text);
        assertTrue(text.contains("Reel R2, 5.00 m to 10.00 m: one colour from 6 stations with 10 readings"), text);
        assertTrue(text.contains("If the true difference were just 2 steps, whatever its direction"), text);
        assertTrue(text.contains("at most 4.25 %: the share of the error rate of 5 % that round 1 of reading may spend."), text);
        assertTrue(text.contains("To settle it: no sensible number of readings settles it"), text);
    }

    @Test
    void takesTheMetersOwnErrorInAgainstATarget() {
        String text = explained(4, 1);

        assertTrue(text.startsWith("Cove C5, 2.50 m (8 ft 2 1/2 in), off target, R19: beyond."), text);
        assertTrue(text.contains("It differs from the target by"), text);
        assertTrue(text.contains("1.36 the meter against the true colour both as declared"), text);
    }

    @Test
    void explainsAChangeInsideAReelWhereOneLiesThere() {
        assertTrue(explained(2, 21).startsWith("Cove C3, 21.00 m (68 ft 10 3/4 in), change within a reel, R14: beyond."));
        assertTrue(explained(0, 18).contains("From its datum end to its far end it changes by"));
        assertTrue(explained(3, 7.9).contains("The station differs from the stretch it lies in by"));
    }

    @Test
    void theBudgetsSquaresAddToTheSquareOfTheUncertaintyOfTheDifference() {
        for (CoveJudgement cove : judgement.coves()) {
            for (JudgedJoint joint : cove.joints()) {
                assertEquals(joint.difference().orElseThrow().standardUncertaintySteps(), joint.budget().wholeSteps(), 1e-4);
            }
        }
        assertEquals(List.of(), judgement.coves().stream().filter(cove -> cove.stretches().isEmpty()).toList());
    }
}
