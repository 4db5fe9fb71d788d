package covewalk.report.punch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.report.text.CheckTable;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lengths that only a better meter could settle do not flood the list. */
class ManyOffTargetTest {

    @Test
    void moreThanThreeAreOneItemThatNamesThemAll() {
        PunchList list = PunchList.of(withLengthsOpen(4));
        assertEquals(4, list.items().size(), "three of the other cove, and one for all four lengths");
        PunchItem item = list.items().get(3);
        PunchWords words = new PunchWords(Words.english());
        assertEquals("Off target or not: 4 lengths that this meter cannot settle; farthest off at 7.50 m (24 ft 7 1/4 in)",
                words.place(item));
        assertEquals("Stands also for: reel R5, 5.00 to 10.00 m, 3.10 steps; reel R5, 5.00 to 10.00 m, 3.10 steps;"
                + " reel R5, 5.00 to 10.00 m, 3.10 steps.", words.standsFor(item));
    }

    @Test
    void threeAreAnItemEach() {
        assertEquals(6, PunchList.of(withLengthsOpen(3)).items().size());
    }

    @Test
    void checkStillListsThemAll() {
        String table = new CheckTable(Words.english()).of(withLengthsOpen(4), List.of());
        assertEquals(4, table.lines().filter(line -> line.contains("off-target")).count(), table);
    }

    static Judgement withLengthsOpen(int lengths) {
        Judgement sample = Sample.judgement();
        CoveJudgement bar = sample.coves().get(1);
        Fault open = bar.faults().stream().filter(fault -> fault.kind() == FaultKind.OFF_TARGET).findFirst().orElseThrow();
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < lengths; i++) {
            faults.add(new Fault(open.kind(), open.positionM(), open.fromM() + i * 1e-9, open.toM(), open.placements(), open.difference(),
                    open.limitSteps(), open.confidence(), open.verdict(), open.hint(), open.settle(), open.budget(), List.of()));
        }
        CoveJudgement flooded = new CoveJudgement(bar.cove(), bar.stations(), bar.stretches(), bar.joints(), faults);
        return new Judgement(sample.survey(), List.of(sample.coves().get(0), flooded, sample.coves().get(2)), sample.notes(), sample.claims());
    }
}
