package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PastedTableTest {

    static List<Arguments> tables() {
        return List.of(
                Arguments.of("a\tb\nc\td", List.of(List.of("a", "b"), List.of("c", "d")), "tabs"),
                Arguments.of("a;1,5\r\nb;2,5\r\n", List.of(List.of("a", "1,5"), List.of("b", "2,5")), "semicolons, commas in numbers"),
                Arguments.of("a,b\rc,d", List.of(List.of("a", "b"), List.of("c", "d")), "commas, line ends of an old kind"),
                Arguments.of("a\t\"x\ty\"\"z\"\"\"\t c ", List.of(List.of("a", "x\ty\"z\"", "c")), "quotation marks, doubled inside"),
                Arguments.of("a\t\"two\nlines\"\nb\tc", List.of(List.of("a", "two\nlines"), List.of("b", "c")), "a line end inside a cell"),
                Arguments.of("a\t5\" reel\nb\tc", List.of(List.of("a", "5\" reel"), List.of("b", "c")), "an inch is no quotation mark"),
                Arguments.of("\n\n \t \na", List.of(List.of("a")), "empty rows"),
                Arguments.of("", List.of(), "nothing"));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource("tables")
    void rowsAndCellsAreToldApart(String pasted, List<List<String>> cells, String why) {
        assertEquals(cells, PastedTable.of(pasted).rows().stream().map(PastedTable.Row::cells).toList(), why);
    }
}
