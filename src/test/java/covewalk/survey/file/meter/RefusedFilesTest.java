package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static covewalk.survey.file.meter.SurveyOnDisk.typed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are refused as a whole: what the user is told, word for word, and that nothing is written. */
class RefusedFilesTest {

    @TempDir
    Path temporary;

    static Stream<Arguments> refused() {
        String table = "CCT,Duv\n2712,0.0012\n2715,0.0012\n";
        ImportOptions none = SurveyOnDisk.NOTHING_SAID;
        return Stream.of(
                Arguments.of("", IN_ROW_ORDER, "walk.csv: The file holds no rows. Export it again; nothing was imported."),
                Arguments.of(" ;;\n\n,,\n", IN_ROW_ORDER, "walk.csv: The file holds no rows. Export it again; nothing was imported."),
                Arguments.of("CCT,Duv\n", IN_ROW_ORDER,
                        "walk.csv: The file has a header and no readings under it. Export it again; nothing was imported."),
                Arguments.of("Tone,Tint\n2712,0.0012\n", IN_ROW_ORDER, "walk.csv: No row names columns that are known; the file begins "
                        + "\"Tone,Tint\". Name them with --map, for example --map Tone=cct_k; nothing was imported."),
                Arguments.of("CCT,Ev\n2712,451\n", IN_ROW_ORDER, "walk.csv: No columns give a colour: needed are CCT and Duv, x and y, "
                        + "or u' and v'. The file has: CCT, Ev. Name them with --map, for example --map Tone=cct_k; nothing was imported."),
                Arguments.of(table, none, "walk.csv: The file does not say where its readings were taken. Give --start and --every in "
                        + "metres, or --positions with a file of one position a line, in the order of the rows; nothing was imported."),
                Arguments.of(table, SurveyOnDisk.at(new Stations.Listed("places.txt", List.of(typed("1")))), "walk.csv: places.txt lists 1 "
                        + "positions and the file has 2 rows of readings. Give one for each row, also for rows that cannot be read; "
                        + "nothing was imported."),
                Arguments.of(table, SurveyOnDisk.at(new Stations.Evenly(typed("12.4"), typed("0.5"))), "walk.csv: Row 2 would lie at 12.9 m, "
                        + "and cove C1 runs from 0 to 12.5 m. Correct --start or --every; nothing was imported."),
                Arguments.of(table, SurveyOnDisk.inCove("C7"),
                        "walk.csv: The survey has no cove C7; it has C1. Say which with --cove; nothing was imported."),
                Arguments.of(table, SurveyOnDisk.naming(Map.of("Tone", "cct_k"), SurveyOnDisk.HALF_METRES),
                        "walk.csv: --map names a column Tone, and the file has: CCT, Duv. Nothing was imported."),
                Arguments.of(table, SurveyOnDisk.naming(Map.of("CCT", "kelvins"), SurveyOnDisk.HALF_METRES), "--map CCT=kelvins names no field. Fields are "
                        + "cct_k, duv, x, y, u_prime, v_prime, u, v, u_1960, v_1960, lux, luminance, position, cove, taken_at, date, time, "
                        + "name, note, ignored; nothing was imported."),
                Arguments.of("CCT,Tcp,Duv\n2712,2713,0.0012\n", IN_ROW_ORDER, "walk.csv: Columns 1, 2 (counted from 1) all read as cct_k "
                        + "and say different things. Name the one that counts with --map, for example --map NUMBER=ignored for each other; "
                        + "nothing was imported."));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource("refused")
    void saysWhatIsMissingAndWritesNothing(String file, ImportOptions options, String words) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals(words, said(survey.add(file, options)));
        assertEquals(List.of(), survey.log());
        assertFalse(Files.exists(survey.file("originals")), "nothing was kept of a file that was refused");
    }
}
