package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.app.text.Texts;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceDueTest {

    @ParameterizedTest
    @CsvSource({
        "1,     0, 'Reference spot in 24 readings or 30 minutes.'",
        "0,    30, 'Reference spot due: 30 minutes since the last visit.'",
        "0,   119, 'Reference spot due: 119 minutes since the last visit.'",
        "0,   120, 'Reference spot due: 2 hours since the last visit.'",
        "0,  2879, 'Reference spot due: 47 hours since the last visit.'",
        "0,  2880, 'Reference spot due: 2 days since the last visit.'",
        "0, 63700, 'Reference spot due: 44 days since the last visit.'",
        "25,    0, 'Reference spot due: 25 readings since the last visit.'"})
    void theTimeSinceIsSaidAsAPersonWould(int readings, long minutes, String words) {
        assertEquals(words, new ReferenceDue(false, readings, minutes).inWords(new Texts(ReferenceDue.class, Locale.ENGLISH)));
    }
}
