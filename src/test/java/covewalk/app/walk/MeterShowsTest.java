package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeterShowsTest {

    @ParameterizedTest
    @EnumSource(Shown.class)
    void whatIsRememberedComesBack(Shown pair) {
        for (int decimals = MeterShows.FEWEST; decimals <= MeterShows.MOST; decimals++) {
            MeterShows shows = new MeterShows(pair, decimals, decimals == 4);
            assertEquals(Optional.of(shows), MeterShows.of(shows.code()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "xy", "xy 9", "lab 4", "4 xy"})
    void nonsenseIsLeftAside(String code) {
        assertEquals(Optional.empty(), MeterShows.of(code));
    }

    @Test
    void aReadingOfFourDecimalsTakesEightDigitsOrSevenAndASign() {
        MeterShows xy = new MeterShows(Shown.XY, 4, false);
        assertEquals(8, xy.first().digits() + xy.second().digits());
        MeterShows cct = xy.with(Shown.CCT);
        assertEquals(7, cct.first().digits() + cct.second().digits());
        assertEquals(true, cct.second().signed());
    }
}
