package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.Problem;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WarningsTest {

    private static Problem dimmed(int line) {
        return Problem.warning("survey.dimmed", "40").at("survey.json", line, "");
    }

    @Test
    void aKindThatComesInEveryRowIsCountedAfterTheThird() {
        List<String> words = new Warnings(IntStream.rangeClosed(1, 50).mapToObj(WarningsTest::dimmed).toList()).inWords();
        assertEquals(4, words.size());
        assertEquals(dimmed(3).inFull(Locale.ROOT), words.get(2));
        assertEquals("and 47 more like the last.", words.get(3));
    }

    @Test
    void warningsOfOneKindStandTogetherInTheOrderFirstSeen() {
        Problem serial = Problem.warning("survey.serial-twice", "S", "R1");
        List<String> words = new Warnings(List.of(dimmed(1), serial, dimmed(2))).inWords();
        assertEquals(List.of(dimmed(1), dimmed(2), serial).stream().map(problem -> problem.inFull(Locale.ROOT)).toList(), words);
    }

    @Test
    void nothingWrongSaysNothing() {
        assertEquals(List.of(), new Warnings(List.of()).inWords());
    }
}
