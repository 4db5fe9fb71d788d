package covewalk.report.punch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchLog;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchStage;
import covewalk.survey.file.punch.PunchState;
import covewalk.survey.file.punch.PunchStates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/punch.md says of punch.csv holds. */
class PunchPageTest {

    private static final Path PAGE = Path.of("docs", "punch.md");

    @TempDir
    Path folder;

    @Test
    void itsExampleIsReadAsItSays() throws IOException {
        List<String> example = Files.readAllLines(PAGE).stream().filter(line -> line.startsWith("    ")).map(String::strip).toList();
        Files.write(folder.resolve("punch.csv"), example);
        PunchStates states = PunchLog.read(folder).value().orElseThrow();
        PunchState item = states.all().iterator().next();
        assertEquals(Optional.of(new PunchPlace("C3", "joint", 5, "R10 | R11")), item.place());
        assertEquals("R. Fitter", item.text(PunchColumn.RESPONSIBLE), "an empty cell changes nothing");
        assertEquals("", item.text(PunchColumn.DUE), "a hyphen clears");
        assertEquals(PunchStage.DONE, item.stage());
        assertEquals(6, states.next());
    }

    @Test
    void itHasEveryColumn() throws IOException {
        String page = Files.readString(PAGE);
        for (PunchColumn column : PunchColumn.values()) {
            assertTrue(page.contains("`" + column.code() + "`"), column.code());
        }
        assertTrue(page.contains("within " + PunchItem.SAME_PLACE_M + " m"), "how near a fault keeps its number");
    }
}
