package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every slip is questioned before the reading is kept; only what cannot be is refused for good. */
class SlipsTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{5}")
    @CsvSource(delimiter = '|', textBlock = """
        # meter | first  | second   | lux | asked                       | why                              | kept on a second Enter
        cct 4   | 27000  | +0.0012  |     | outside 1000 to 20000 K     | a digit too many in CCT          | false
        cct 4   | 2700   | 0.0012   |     | no sign                     | the sign of Duv left out         | true
        cct 4   | 2700   | -0.025   |     | is unusual                  | Duv ten times too large          | true
        cct 4   | 2700   | +0.034   |     | No light has                | Duv that no light has            | false
        cct 4   | 2700   | +0.34    |     | outside -0.05 to 0.05       | Duv a hundred times too large    | false
        cct 4   | 7200   | +0.0012  |     | label of reel R1 says 2700  | two digits of CCT swapped        | true
        cct 4   | 270    | +0.0012  |     | outside 1000 to 20000 K     | a digit of CCT left out          | false
        xy 4    | 0.4103 | 0.4580   |     | other way round             | x and y swapped                  | true
        xy 4    | 0.2616 | 0.5274   |     | As u' and v'                | u' and v' typed as x and y       | false
        xy 4    | 0.458  | 0.4103   |     | another number of digits    | a digit of x left out            | true
        xy 4    | 0.4580 | 0.41033  |     | another number of digits    | a digit of y too many            | true
        xy 4    | 0.4350 | 0.4040   |     | label of reel R1 says 2700  | another reel than the label says | true
        xy 4    | 0.9580 | 0.4103   |     | exceed 1                    | x and y that no light has        | false
        uv 4    | 0.2616 | 0.3516   |     | CIE 1960                    | v of the older diagram           | false
        uv 4    | 0.5274 | 0.2616   |     | other way round             | u' and v' swapped                | false
        uv 4    | 0.4580 | 0.4103   |     | As x and y                  | x and y typed as u' and v'       | false
        xy 4    | 0.4580 | 0.4103   | .   | no lux                      | lux that is no number            | false
        xy 4    | 0.4580 | 0.       |     | Type y                      | y left out                       | false
        """)
    void isAskedAbout(String meter, String first, String second, String lux, String asked, String why, boolean keptAgain) {
        TestWalk walk = TestWalk.with(NewSurvey.in(folder), meter);
        walk.type(first, second).model().entry().lux().set(lux == null ? "" : lux);
        walk.model().enter();
        String question = walk.question() + walk.model().says().question().get().refused();
        assertEquals(0, walk.onDisk().size());
        boolean told = new Slips(walk.model().survey().survey(), walk.desk().texts(WalkScreen.class)).of(walk.model().entry(), walk.model().way().aim())
                .stream().anyMatch(slip -> slip.says().contains(asked)) || question.contains(asked);
        assertTrue(told, question);
        walk.model().enter();
        assertEquals(keptAgain ? 1 : 0, walk.onDisk().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        xy 4  | 0.4580  | 0.4103
        xy 5  | 0.45801 | 0.41034
        uv 4  | 0.2616  | 0.5274
        cct 4 | 2712    | -0.0012
        cct 3 | 2712    | +0.001
        """)
    void whatIsNoSlipIsKeptAtOnce(String meter, String first, String second) {
        TestWalk walk = TestWalk.with(NewSurvey.in(folder), meter);
        walk.type(first, second).model().enter();
        assertEquals("", walk.question());
        assertEquals(1, walk.onDisk().size());
    }

    @Test
    void aQuestionNeverBlocksTheOtherActions() {
        TestWalk walk = TestWalk.in(NewSurvey.in(folder));
        walk.type("0.4103", "0.4580").model().enter();
        walk.model().way().skip();
        assertEquals("", walk.question());
        assertEquals("0.4103", walk.model().entry().first().get());
    }
}
