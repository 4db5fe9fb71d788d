package covewalk.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What was typed is printed as it was typed, and what was corrected stays to be seen. */
class ReadingsPageTest {

    @Test
    void keepsTheDigits() {
        ReadingsPage page = page(List.of(reading("1", "", 2)));
        assertEquals(List.of("1", "C1 at 0.50 m", "x 0.4580 y 0.4100", "1500", "2026-10-05 18:00"), page.rows().get(0).cells());
    }

    @Test
    void strikesWhatWasCorrectedAndPointsBothWays() {
        ReadingsPage page = page(List.of(reading("1", "", 2), reading("2", "1", 3)));
        assertTrue(page.rows().get(0).struck());
        assertEquals("corrected by 2.", page.rows().get(0).remark());
        assertEquals(3, page.rows().get(0).points());
        assertFalse(page.rows().get(1).struck());
        assertEquals("corrects 1.", page.rows().get(1).remark());
        assertEquals(2, page.rows().get(1).points());
    }

    @Test
    void showsAWithdrawalWithItsReason() {
        ReadingsPage page = page(List.of(reading("1", "", 2), new Reading("2", "C1", typed("0.50"), Role.WALK, "A", 1, Optional.empty(),
                Optional.empty(), "", "1", "head slipped", 3)));
        assertEquals("withdrawn by 2.", page.rows().get(0).remark());
        assertEquals("withdraws 1.", page.rows().get(1).remark());
        assertEquals("head slipped", page.rows().get(1).note());
    }

    @Test
    void aCorrectionCorrectedAgainSaysBoth() {
        ReadingsPage page = page(List.of(reading("1", "", 2), reading("2", "1", 3), reading("3", "2", 4)));
        assertEquals("corrects 1.; corrected by 3.", page.rows().get(1).remark());
        assertTrue(page.rows().get(1).struck());
    }

    @Test
    void ofAVeryLongLogPrintsTheCorrectionsAndCountsTheRest() {
        List<Reading> log = IntStream.range(0, 3000).mapToObj(i -> reading("r" + i, i == 7 ? "r3" : "", i + 2)).toList();
        ReadingsPage page = page(log);
        assertEquals(2, page.rows().size());
        assertTrue(page.leftOut().contains("2998"), page.leftOut());
    }

    private static ReadingsPage page(List<Reading> log) {
        return new ReadingsPage.Maker(Words.english(), "A").of(log);
    }

    private static Reading reading(String id, String replaces, int line) {
        return new Reading(id, "C1", typed("0.50"), Role.WALK, "A", 1, Optional.of(TypedColour.ofXy(typed("0.4580"), typed("0.4100"))),
                Optional.of(typed("1500")), "2026-10-05T18:00", replaces, "", line);
    }

    private static Typed typed(String digits) {
        return Typed.of(digits).orElseThrow();
    }
}
