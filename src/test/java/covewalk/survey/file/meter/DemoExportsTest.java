package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.digits;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static covewalk.survey.file.meter.SurveyOnDisk.typed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reading;
import covewalk.survey.TypedColour;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The exports that the demo shows, from the folder it shows them in. */
class DemoExportsTest {

    private static final Path DEMO = Path.of("survey-demo", "meter-exports");
    private static final ImportOptions EACH_HALF_METRE = SurveyOnDisk.at(new Stations.Evenly(typed("0.25"), typed("0.5")));

    @TempDir
    Path temporary;

    @Test
    void importsUtf16WithTabsAndItsOwnPositions() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals("", said(survey.add(DEMO.resolve("foyer-utf16-tabs.csv"), SurveyOnDisk.NOTHING_SAID)));
        assertEquals(12, survey.log().size());
        assertEquals("1 C1 0.25 2717 -0.0001 427.2 2026-10-05T19:31:04 from foyer-utf16-tabs.csv line 6; 1", first(survey));
    }

    @Test
    void importsGermanWithSemicolonsAndAUnitsRow() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals("", said(survey.add(DEMO.resolve("flur-semikolon-windows-1252.csv"), EACH_HALF_METRE)));
        assertEquals(10, survey.log().size());
        assertEquals("from flur-semikolon-windows-1252.csv line 9; 5; neben T\u00fcr", survey.log().get(4).note());
        assertEquals("1 C1 0.25 2712 -0.0002 1222.9 2026-10-05T20:10:00 from flur-semikolon-windows-1252.csv line 5; 1", first(survey));
    }

    @Test
    void importsTwelveHourClockAndFootCandles() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add(DEMO.resolve("bays-12-hour-foot-candles.csv"), EACH_HALF_METRE);
        assertEquals("""
                bays-12-hour-foot-candles.csv:8: CCT(K): The meter wrote "Under" where a number belongs: it had no value to give. \
                Read the place again if it matters.
                bays-12-hour-foot-candles.csv:12: The row is called "Average": a sum of other rows and no reading.""", said(result));
        assertEquals("11 = 9 + 2", result.rows() + " = " + result.kept() + " + " + result.setAside().size());
        assertEquals("1 C1 0.25 2715 -0.0001 426 2026-10-13T19:20:00 from bays-12-hour-foot-candles.csv line 2; Bay 1; fc 39.6", first(survey));
    }

    @Test
    void importsAJapaneseHeaderWithPairsThatDisagreeInOneRow() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add(DEMO.resolve("iriguchi-japanese.csv"), EACH_HALF_METRE);
        assertEquals("8 kept, 1 warning", result.kept() + " kept, " + result.warnings().size() + " warning");
        assertTrue(said(result).startsWith("iriguchi-japanese.csv:7: \u8272\u5ea6u\u2032: u', v' differ by 2.7 steps from x, y"), said(result));
        assertEquals("2026-10-05T20:05:00 from iriguchi-japanese.csv line 2; \u5165\u53e31", survey.log().get(0).takenAt() + " " + survey.log().get(0).note());
    }

    private static String first(SurveyOnDisk survey) throws IOException {
        Reading reading = survey.log().get(0);
        TypedColour colour = reading.colour().orElseThrow();
        return String.format(Locale.ROOT, "%s %s %s %s %s %s %s", reading.id(), reading.cove(), reading.positionM().text(),
                digits(colour.cctDuv()), reading.lux().orElseThrow().text(), reading.takenAt(), reading.note());
    }
}
