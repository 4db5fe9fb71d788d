package covewalk.survey.file.log;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IsoTimeTest {

    @ParameterizedTest
    @ValueSource(strings = {"2026-10-05T18:30", "2026-10-05T18:30:07", "2026-10-05T18:30:07.25", "2026-10-05T18:30Z",
        "2026-10-05T18:30:07+02:00", "2026-10-05T18:30:07-0700", "2026-10-05T18:30+02", "2026-10-05 18:30"})
    void takesTimesOfIso8601(String time) {
        assertTrue(IsoTime.looksRight(time));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2026-10-05", "18:30", "5.10.2026 18:30", "2026-13-05T18:30", "2026-10-32T18:30",
        "2026-10-05T25:30", "2026-10-05T18:60", "2026-10-05T18:30 pm", "2026-10-05T18:30+2", "10/05/2026 6:30 PM"})
    void takesNothingElse(String time) {
        assertFalse(IsoTime.looksRight(time));
    }
}
