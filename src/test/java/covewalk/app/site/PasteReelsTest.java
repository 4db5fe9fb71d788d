package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import covewalk.survey.Cove;
import covewalk.survey.Reel;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PasteReelsTest {

    @TempDir
    Path folder;
    private Desk desk;
    private PasteReels paste;

    @BeforeEach
    void openTheDemonstrationWithItsNineteenReels() {
        desk = Desks.withDemo(folder);
        paste = new SiteModel(desk).paste();
    }

    private List<Reel> added() {
        return desk.survey().survey().reels().stream().skip(19).toList();
    }

    @Test
    void columnsGoByTheirTitlesInAnyOrderAndLanguage() {
        paste.textProperty().set("Charge;Rolle;Länge (m);CCT;SDCM\nA-1;W1;5,0;2700 K;< 3 SDCM\nA-2;W2;4,9;2700 K;3");
        assertTrue(paste.readyProperty().get());
        paste.add();
        assertEquals(List.of("W1 A-1 5.0 2700 3.0", "W2 A-2 4.9 2700 3.0"), added().stream().map(reel -> reel.id() + " " + reel.lot() + " "
                + reel.lengthM().getAsDouble() + " " + reel.nominalCct().getAsInt() + " " + reel.claimedSteps().getAsDouble()).toList());
        assertEquals("2 reels added, 0 were there already, 0 rows left in the box.", paste.saysProperty().get());
        assertEquals("", paste.textProperty().get());
    }

    @Test
    void columnsWithoutATitleAreAskedForOneByOne() {
        paste.textProperty().set("S-1\tx\tA-1\nS-2\ty\tA-1");
        assertFalse(paste.readyProperty().get());
        assertTrue(paste.question().contains("column 1") && paste.question().contains("S-1"), paste.question());
        paste.answer(ReelColumn.SERIAL);
        paste.answer(ReelColumn.NOTHING);
        paste.answer(ReelColumn.LOT);
        assertTrue(paste.readyProperty().get());
        paste.add();
        assertEquals(List.of("R20 S-1 A-1", "R21 S-2 A-1"), added().stream().map(reel -> reel.id() + " " + reel.serial() + " " + reel.lot()).toList());
    }

    @Test
    void anAnswerGivenTwiceAsksForTheFirstColumnAgain() {
        paste.textProperty().set("1\t2");
        paste.answer(ReelColumn.LOT);
        paste.answer(ReelColumn.LOT);
        assertEquals(0, paste.askedProperty().get());
    }

    @Test
    void scannedLabelsAreReadFromTheirColumn() {
        paste.textProperty().set("Code\n(01)09501101530003(10)AB(21)S7\nPLAIN-7");
        paste.add();
        assertEquals(List.of("AB/S7", "/PLAIN-7"), added().stream().map(reel -> reel.lot() + "/" + reel.serial()).toList());
    }

    @Test
    void rowsThatCannotBeReadStayInTheBoxAndTheOthersAreAdded() {
        paste.textProperty().set("Reel\tCCT\nW1\t2700\nW2\t27OO\nR1\t2700\nW1\t3000");
        paste.add();
        assertEquals(List.of("W1"), added().stream().map(Reel::id).toList());
        assertEquals("Reel\tCCT\nW2\t27OO\nR1\t2700\nW1\t3000", paste.textProperty().get());
        assertEquals(List.of("Row 3: Nominal CCT: 27OO is no number. Write digits with one decimal mark.",
                "Row 4: There is a reel R1 already, with another label.", "Row 5: There is a reel W1 already, with another label."),
                paste.troubleProperty().get().lines().toList());
    }

    @Test
    void theSameTableAgainAddsNothing() {
        paste.textProperty().set("Reel\tLot\nW1\tA");
        paste.add();
        paste.textProperty().set("Reel\tLot\nW1\tA");
        paste.add();
        assertEquals(1, added().size());
        assertEquals("0 reels added, 1 were there already, 0 rows left in the box.", paste.saysProperty().get());
    }

    @Test
    void fiveThousandReelsAreAddedInOneGo() {
        paste.textProperty().set("Serial\n" + IntStream.range(0, 5000).mapToObj(i -> "S" + i).collect(Collectors.joining("\n")));
        paste.add();
        assertEquals(5000, added().size());
        assertEquals("R5019", added().get(4999).id());
    }

    /** With a cove of 12 m in which nothing lies, behind those of the demonstration. */
    private void emptyCove() {
        Cove first = desk.survey().survey().coves().get(0);
        Cove empty = new Cove("C9", "", 12, false, "", OptionalDouble.empty(), "", first.target(), List.of(), List.of());
        desk.survey().change(survey -> survey.withCoves(Stream.concat(survey.coves().stream(), Stream.of(empty)).toList()));
    }

    private List<String> laid() {
        return desk.survey().survey().cove("C9").orElseThrow().placements().stream()
                .map(lies -> lies.reel() + " " + lies.fromM() + " " + lies.toM() + " " + lies.knownFrom().code()).toList();
    }

    @Test
    void reelsWithLengthsCanBeLaidEndToEndInAnEmptyCove() {
        emptyCove();
        paste.textProperty().set("Reel;Length\nW2;5\nW1;4.9\nW3;2.1");
        paste.add();
        assertTrue(paste.layRow().saysProperty().get().startsWith("The 3 reels of this table are 12 m long together."),
                paste.layRow().saysProperty().get());
        assertEquals(List.of("C9"), paste.layRow().coves().stream().map(Cove::id).toList());
        assertEquals(List.of(), laid(), "nothing is laid that nobody asked for");
        paste.layRow().layIn(paste.layRow().coves().get(0));
        assertEquals(List.of("W2 0.0 5.0 assumed", "W1 5.0 9.9 assumed", "W3 9.9 12.0 assumed"), laid());
        assertEquals("3 reels laid in C9, from the datum to 12 m, as assumed. Say in the cove where each one was seen.",
                paste.layRow().saysProperty().get());
        assertEquals(List.of(), paste.layRow().coves());
    }

    @Test
    void whatHasNoRoomIsSaidAndTheLastOneIsCutAtTheEnd() {
        emptyCove();
        paste.textProperty().set("Reel;Length\nW1;10\nW2;10\nW3;10");
        paste.add();
        paste.layRow().layIn(paste.layRow().coves().get(0));
        assertEquals(List.of("W1 0.0 10.0 assumed", "W2 10.0 12.0 assumed"), laid());
        assertTrue(paste.layRow().saysProperty().get().endsWith("No room for: W3."), paste.layRow().saysProperty().get());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
        Reel;Length,W1;5,W2;     | a row says no length
        Reel;Length,W1;5,W2;long | a row could not be read, and the order has a gap
        Reel;Lot,W1;A,W2;A       | no lengths at all
        Reel,R1                  | it lies somewhere already
        """)
    void whatCannotBeLaidInOrderIsNotOffered(String table, String why) {
        emptyCove();
        paste.textProperty().set(table.replace(',', '\n'));
        paste.add();
        assertEquals(List.of(), paste.layRow().coves());
    }

    @Test
    void withoutAnEmptyCoveNothingIsOffered() {
        paste.textProperty().set("Reel;Length\nW1;5");
        paste.add();
        assertEquals("", paste.layRow().saysProperty().get());
        emptyCove();
        assertEquals(List.of("C9"), paste.layRow().coves().stream().map(Cove::id).toList(), "as soon as there is one it is");
    }
}
