package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayRemarkTest {

    @TempDir
    Path temporary;

    private SurveyOnDisk visited() throws IOException {
        return SurveyOnDisk.in(temporary).visitedOn("2026-10-05");
    }

    @Test
    void countsReadingsOfOtherDaysOnceAndKeepsThem() throws IOException {
        ImportResult result = visited().add("CCT,Duv,Time\n2712,0.0012,2026-10-05 20:15:00\n2715,0.0011,2026-03-02 19:00:00\n"
                + "2710,0.0012,2025-11-30 18:00:00\n", IN_ROW_ORDER);
        assertEquals("walk.csv: 2 of 3 readings were taken on another day than the visit of 2026-10-05: from 2025-11-30 to 2026-03-02. "
                + "They are kept; look whether the meter still held an earlier walk, and take back what does not belong here, or "
                + "correct the date of the visit.", said(result));
        assertEquals(3, result.kept());
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(textBlock = """
        2026-10-05 20:15:00,       0, the day of the visit
        2026-10-06 01:10:00,       0, a walk that ends after midnight
        2026-10-06 12:00:00,       1, noon is no night any more
        2026-10-04 23:59:00,       1, the evening before
        2026-10-05T23:30:00-08:00, 0, the clock on the site counts and not the one in Greenwich
        """)
    void knowsTheDayOfTheVisit(String time, int remarks, String why) throws IOException {
        assertEquals(remarks, visited().add("CCT,Duv,Time\n2712,0.0012," + time + "\n", IN_ROW_ORDER).warnings().size(), why);
    }

    @Test
    void saysNothingWhereTheVisitHasNoDate() throws IOException {
        assertEquals("", said(SurveyOnDisk.in(temporary).add("CCT,Duv,Time\n2712,0.0012,2025-10-05 20:15:00\n", IN_ROW_ORDER)));
    }
}
