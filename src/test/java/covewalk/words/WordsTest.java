package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.Towards;
import covewalk.report.punch.Sample;
import covewalk.verdict.Hint;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {

    private final Words words = Words.english();

    @ParameterizedTest
    @EnumSource(value = Hint.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void everySuspicionIsOnlyConsistentWithItsPattern(Hint hint) {
        assertTrue(words.suspicion(hint).toLowerCase(Locale.ROOT).contains("consistent with"), words.suspicion(hint));
    }

    @Test
    void countsReadingsASide() {
        assertEquals("read once more on each side", words.toSettle(new Settle(OptionalInt.of(1), Settle.WhyNot.NONE)));
        assertEquals("read 6 times more on each side", words.toSettle(new Settle(OptionalInt.of(6), Settle.WhyNot.NONE)));
        assertEquals("", words.toSettle(Settle.SETTLED));
    }

    @Test
    void saysWhyNoReadingHelps() {
        assertTrue(words.toSettle(new Settle(OptionalInt.empty(), Settle.WhyNot.COARSE_DIGITS)).contains("four decimals"));
    }

    @Test
    void namesBothWaysADifferenceGoes() {
        assertEquals("warmer, pinker", words.towards(new Towards(Towards.Along.WARMER, Towards.Across.PINKER)));
        assertEquals("same", words.towards(new Towards(Towards.Along.SAME, Towards.Across.SAME)));
    }

    @Test
    void countsEveryPlaceOnce() {
        assertEquals("2 beyond, 2 unsettled, 1 within, 1 not read", words.counts(Sample.judgement()));
    }

    @Test
    void roundsTheFiguresInANote() {
        assertEquals("The digits typed are coarser than the noise: they leave open 0.41 steps.",
                new NoteWords(words).sentence(new Note(Note.Kind.COARSE_DIGITS, List.of("0.41327"))));
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void everyCautionHasItsSource(Caution caution) {
        CautionWords cautions = new CautionWords(words);
        assertTrue(cautions.sentence(caution).endsWith(".") || cautions.sentence(caution).contains("?"));
        assertTrue(cautions.source(caution).length() > 5);
    }

    @Test
    void cautionsDeferToSiteRulesCodesAndElectricians() {
        String head = new CautionWords(words).headLine();
        assertTrue(head.contains("site rules") && head.contains("local codes") && head.contains("licensed electrician"), head);
    }
}
