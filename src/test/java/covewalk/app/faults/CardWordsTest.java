package covewalk.app.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.desk.Desk;
import covewalk.app.strip.Finding;
import covewalk.app.text.Texts;
import covewalk.verdict.Judgement;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CardWordsTest {

    @TempDir
    Path folder;
    private Judgement judgement;

    @BeforeEach
    void judge() {
        Desk desk = DemoDesk.open(folder);
        judgement = desk.survey().judgementProperty().get();
    }

    private Card card(int cove, double atM, Locale language, boolean feet) {
        Finding finding = Finding.in(judgement.coves().get(cove), judgement.survey().limits()).stream()
                .filter(there -> Math.abs(there.positionM() - atM) < 1e-6).findFirst().orElseThrow();
        return new CardWords(new Texts(CardWords.class, language), feet).card(finding, judgement);
    }

    private Card card(int cove, double atM) {
        return card(cove, atM, Locale.ENGLISH, false);
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '|', textBlock = """
        # cove | at | sentence begins                        | why
        0 | 5.0  | The far side lies 3.41 steps off, warmer   | a joint has a far side
        0 | 10.0 | The far side lies                          | an unsettled one too
        2 | 21.0 | Behind the change it lies                  | a change within a reel has a behind
        0 | 17.5 | From end to end it changes by              | a drift has two ends
        4 | 2.5  | It lies 7.60 steps off the target          | a length is off its target
        3 | 7.9  | It lies                                    | a single spot is off its neighbours
        """)
    void saysHowFarApartInOneSentence(int cove, double atM, String begins, String why) {
        String sentence = card(cove, atM).sentence();
        assertTrue(sentence.startsWith(begins), why + ": " + sentence);
    }

    @Test
    void saysWhatThatIsAgainstTheLimit() {
        assertTrue(card(0, 5).sentence().endsWith("That is 1.7 times the limit of 2 steps."), card(0, 5).sentence());
        assertTrue(card(0, 10).sentence().endsWith("Whether that is beyond the limit of 2 steps the readings cannot say yet."));
        assertTrue(card(0, 15).sentence().endsWith("That is within the limit of 2 steps."));
    }

    @Test
    void putsWhatToCheckFirstBeforeAllElse() {
        List<Card.Line> lines = card(0, 5).checkFirst();
        assertEquals("Check first", lines.get(0).name());
        assertEquals(List.of("Check first", "Suspicion", "To do"), lines.stream().map(Card.Line::name).toList());
    }

    @Test
    void setsBothLabelsSideBySideAndMarksWhatDiffers() {
        Card card = card(0, 5);
        assertEquals(List.of("R1", "R2"), card.reels());
        assertEquals(List.of("bin", "lot", "made"), card.labels().stream().filter(row -> row.differs()).map(row -> row.field()).toList());
    }

    @Test
    void warnsWhereSomebodyGoesUpOrTouchesWiring() {
        assertEquals(2, card(0, 5).cautions().size());
        assertTrue(card(0, 5).cautions().get(1).contains("isolate, lock off, prove dead"));
        assertEquals(1, card(0, 10).cautions().size(), "reading again touches no wiring");
        assertTrue(card(0, 15).cautions().isEmpty(), "nobody has to go to what is within");
    }

    @Test
    void restsOnTheSameAsTheCommandLineExplains() {
        assertTrue(card(0, 5).restsOn().get(0).cells().get(0).startsWith("Cove C1, 5.00 m (16 ft 4 3/4 in), joint, R1 | R2: beyond."));
        assertTrue(card(0, 5).restsOn().stream().anyMatch(line -> line.cells().size() == 4), "the budget is a table");
    }

    @Test
    void claimsStandBesideWhatWasMeasured() {
        assertTrue(card(0, 5).notes().stream().anyMatch(note -> note.contains("Both can be true with up to 6 steps")), card(0, 5).notes().toString());
    }

    @Test
    void leadsWithFeetWhereThatIsChosen() {
        assertEquals("Joint at 16 ft 4 3/4 in", card(0, 5, Locale.ENGLISH, true).title());
    }

    @Test
    void speaksGerman() {
        Card card = card(0, 5, Locale.GERMAN, false);
        assertTrue(card.title().startsWith("Stoß bei 5,00 m"), card.title());
        assertTrue(card.sentence().startsWith("Die Gegenseite liegt 3,41 Schritte daneben, wärmer"), card.sentence());
        assertFalse(card.restsOn().isEmpty());
    }
}
