package covewalk.report.punch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.punch.PunchChange;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchState;
import covewalk.survey.file.punch.PunchStates;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The sample's items are joints of C1 at 5 and 10 m, a change in R3 at 12.75 m, and R5 of C2 off target. */
class ItemNumbersTest {

    private final Judgement sample = Sample.judgement();
    private final PunchStates firstReport = PunchStates.NONE.after(PunchList.of(sample).registrations());

    private static Judgement changed(Judgement judgement, UnaryOperator<List<Fault>> change) {
        List<CoveJudgement> coves = judgement.coves().stream().map(cove -> new CoveJudgement(cove.cove(), cove.stations(),
                cove.stretches(), cove.joints(), change.apply(cove.faults()))).toList();
        return new Judgement(judgement.survey(), coves, judgement.notes(), judgement.claims());
    }

    private static Judgement without(Judgement judgement, Predicate<Fault> repaired) {
        return changed(judgement, faults -> faults.stream().filter(repaired.negate()).toList());
    }

    private static Fault at(Fault fault, double positionM) {
        double by = positionM - fault.positionM();
        return new Fault(fault.kind(), positionM, fault.fromM() + by, fault.toM() + by, fault.placements(), fault.difference(),
                fault.limitSteps(), fault.confidence(), fault.verdict(), fault.hint(), fault.settle(), fault.budget(), fault.notes());
    }

    /** The sample with the change inside R3 at these places. */
    private Judgement insideR3(double... positionsM) {
        return changed(sample, faults -> {
            List<Fault> now = new ArrayList<>();
            for (Fault fault : faults) {
                if (fault.positionM() != 12.75) {
                    now.add(fault);
                } else {
                    for (double positionM : positionsM) {
                        now.add(at(fault, positionM));
                    }
                }
            }
            return now;
        });
    }

    private static String told(PunchList list) {
        return String.join(", ", list.items().stream().map(item -> item.number() + " at " + item.fault().positionM()).toList());
    }

    private PunchList listOf(Judgement judgement, PunchStates recorded) {
        return PunchList.of(judgement, recorded, Optional.empty());
    }

    @Test
    void aFirstListNumbersInWalkingOrderAndRegistersWhatEachNumberStandsFor() {
        assertEquals(List.of(PunchChange.of(1).at(PunchPlace.of("C1", "joint", 5, List.of("R1", "R2"))),
                PunchChange.of(2).at(PunchPlace.of("C1", "joint", 10, List.of("R2", "R3"))),
                PunchChange.of(3).at(PunchPlace.of("C1", "mid-reel", 12.75, List.of("R3"))),
                PunchChange.of(4).at(PunchPlace.of("C2", "off-target", 7.5, List.of("R5")))), PunchList.of(sample).registrations());
        assertFalse(PunchList.of(sample).isFixed(1));
        assertTrue(listOf(sample, firstReport).isFixed(1));
        assertEquals(List.of(), listOf(sample, firstReport).registrations());
    }

    @Test
    void whatIsPutRightKeepsItsNumberAndTheOthersTheirs() {
        PunchList list = listOf(without(sample, fault -> fault.positionM() == 5), firstReport);
        assertEquals("2 at 10.0, 3 at 12.75, 4 at 7.5", told(list));
        assertEquals(List.of(1), list.gone().stream().map(item -> item.state().item()).toList());
        assertEquals(OptionalInt.empty(), list.gone().get(0).partOf());
    }

    @Test
    void aNewFaultGetsANumberThatNobodyHadAlthoughOneIsGone() {
        PunchStates two = PunchStates.NONE.after(PunchList.of(without(sample, fault -> fault.positionM() != 10)).registrations());
        assertEquals("2 at 5.0, 1 at 10.0, 3 at 12.75, 4 at 7.5", told(listOf(sample, two)));
        PunchStates high = firstReport.after(List.of(PunchChange.of(9).with(PunchColumn.NOTE, "taken out of the list by hand")));
        assertEquals("1 at 5.0, 2 at 10.0, 10 at 17.0, 4 at 7.5", told(listOf(insideR3(17.0), high)));
    }

    @Test
    void aFaultThatComesBackHasItsOldNumber() {
        PunchStates after = firstReport.after(listOf(without(sample, fault -> fault.positionM() == 5), firstReport).registrations());
        assertEquals("1 at 5.0, 2 at 10.0, 3 at 12.75, 4 at 7.5", told(listOf(sample, after)));
    }

    /** The change lies between 12.5 and 13 m; read again, its place may move by its range and 0.6 m more. */
    @Test
    void aFaultFoundALittleAwayIsTheSameOne() {
        assertEquals("1 at 5.0, 2 at 10.0, 3 at 13.55, 4 at 7.5", told(listOf(insideR3(13.55), firstReport)));
        assertEquals("1 at 5.0, 2 at 10.0, 5 at 13.65, 4 at 7.5", told(listOf(insideR3(13.65), firstReport)));
    }

    @Test
    void ofTwoCloseTogetherTheNearestKeepsTheNumber() {
        assertEquals("1 at 5.0, 2 at 10.0, 5 at 12.4, 3 at 12.9, 4 at 7.5", told(listOf(insideR3(12.4, 12.9), firstReport)));
        PunchStates two = PunchStates.NONE.after(PunchList.of(insideR3(12.4, 12.9)).registrations());
        assertEquals("1 at 5.0, 2 at 10.0, 3 at 12.5, 4 at 13.0, 5 at 7.5", told(listOf(insideR3(12.5, 13.0), two)));
    }

    @Test
    void anotherReelAtTheSamePlaceIsAnotherFault() {
        PunchStates other = PunchStates.NONE.after(List.of(PunchChange.of(1).at(PunchPlace.of("C1", "joint", 5, List.of("R9", "R2")))));
        assertEquals(2, listOf(sample, other).items().get(0).number());
        assertEquals(1, listOf(sample, other).gone().get(0).state().item());
    }

    @Test
    void itemsOfOneLengthEachThatBecomeOneItemSayWhereTheyAre() {
        PunchStates apart = PunchStates.NONE.after(PunchList.of(ManyOffTargetTest.withLengthsOpen(3)).registrations());
        assertEquals(6, apart.all().size());
        PunchList together = listOf(ManyOffTargetTest.withLengthsOpen(4), apart);
        assertEquals(4, together.items().get(3).number());
        assertEquals(List.of("5 in 4", "6 in 4"), together.gone().stream()
                .map(item -> item.state().item() + " in " + item.partOf().orElseThrow()).toList());
    }

    @Test
    void whatIsRecordedStandsAtTheItem() {
        PunchStates done = firstReport.after(List.of(PunchChange.of(3).with(PunchColumn.DONE, "2026-11-30")));
        assertEquals("2026-11-30", listOf(sample, done).items().get(2).state().text(PunchColumn.DONE));
    }

    @Test
    void aVisitThatFollowsGoesOnWithTheNumbersAndCarriesThemOver() {
        PunchStates before = PunchStates.NONE.after(PunchList.of(sample).registrations())
                .after(List.of(PunchChange.of(1).with(PunchColumn.RESPONSIBLE, "Ben")));
        EarlierVisit visit = new EarlierVisit("first walk", sample, before);
        Judgement now = without(sample, fault -> fault.positionM() == 5);
        PunchList list = PunchList.of(now, PunchStates.NONE, Optional.of(visit));
        assertEquals("2 at 10.0, 3 at 12.75, 4 at 7.5", told(list));
        assertEquals(before.all().stream().map(PunchState::asChange).toList(), list.registrations());
        assertEquals("Ben", list.gone().get(0).state().text(PunchColumn.RESPONSIBLE));
        assertEquals(Verdict.BEYOND, list.now(list.gone().get(0)).orElseThrow().verdict(), "the joint itself, by this visit's readings");
        assertEquals(Verdict.UNSETTLED, list.before(list.items().get(0)).orElseThrow().verdict());
        assertEquals(Optional.empty(), listOf(now, before).before(list.items().get(0)), "it follows no visit");
    }
}
