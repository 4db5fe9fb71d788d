package covewalk.report.punch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.page.Pages;
import covewalk.survey.Problem;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A person on site knows coves and reels, not lines of files. */
class WarningWordsTest {

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '|', textBlock = """
        # file        | line | column                         | begins with
        survey.json   | 72   | coves[0].placements[1].fromM   | Cove C1, 5.00 m:
        survey.json   | 70   | coves[1].placements            | Cove C2:
        survey.json   | 20   | reels[1].serial                | Reel R2:
        survey.json   | 5    | setups[0].calibrationDue       | Set-up A:
        survey.json   | 3    | limits.setBy                   | No clause
        readings.csv  | 2    | x                              | Reading r0.25-0, cove C1 at 0.25 m:
        survey.json   | 2    | coves[9].placements            | No clause
        """)
    void namesThePlaceAsPeopleDo(String file, int line, String column, String begins) {
        WarningWords words = words(List.of(Problem.warning("survey.limit-unset").at(file, line, column)));
        List<String> all = new ArrayList<>(words.general());
        List.of("C1", "C2").forEach(cove -> all.addAll(words.ofCove(cove)));
        assertEquals(1, all.size());
        assertTrue(all.get(0).startsWith(begins), all.get(0));
    }

    @Test
    void standsWithItsCove() {
        WarningWords words = words(List.of(Problem.warning("survey.gap", "4", "5").at("survey.json", 1, "coves[1].placements[1].fromM"),
                Problem.warning("survey.limit-unset").at("survey.json", 1, "limits.setBy")));
        assertEquals(1, words.ofCove("C2").size());
        assertEquals(List.of(), words.ofCove("C1"));
        assertEquals(1, words.general().size());
    }

    @Test
    void countsWhatIsTheSameAgainAndAgain() {
        List<Problem> many = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            many.add(Problem.warning("survey.limit-unset").at("survey.json", i, ""));
        }
        List<String> told = words(many).general();
        assertEquals(4, told.size());
        assertTrue(told.get(3).endsWith("And 37 more like this."), told.get(3));
    }

    private static WarningWords words(List<Problem> warnings) {
        Audit audit = Pages.audit(Sample.judgement(), "");
        return new WarningWords(Words.english(), new Audit(audit.judgement(), audit.log(), warnings, Optional.empty()));
    }
}
