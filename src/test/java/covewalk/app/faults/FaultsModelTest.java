package covewalk.app.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DemoDesk;
import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.strip.Finding;
import covewalk.verdict.FaultKind;
import covewalk.verdict.limit.Verdict;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On the demonstration survey, whose faults are known. */
class FaultsModelTest {

    @TempDir
    Path folder;
    private Desk desk;
    private FaultsModel model;

    @BeforeEach
    void open() {
        desk = DemoDesk.open(folder);
        model = new FaultsModel(desk);
    }

    private static String told(Finding finding) {
        return finding.cove().cove().id() + " " + finding.positionM() + " " + finding.kind().code() + " " + finding.verdict().code();
    }

    private Finding at(String cove, double positionM) {
        return model.shownProperty().get().stream().filter(finding -> finding.cove().cove().id().equals(cove)
                && Math.abs(finding.positionM() - positionM) < 1e-6).findFirst().orElseThrow();
    }

    @Test
    void listsWhatIsFarthestBeyondItsLimitFirstAndSingleSpotsLast() {
        List<Finding> shown = model.shownProperty().get();
        assertEquals("C5 2.5 off-target beyond", told(shown.get(0)));
        assertEquals("C1 10.0 joint unsettled", told(shown.get(shown.size() - 2)));
        assertEquals("C4 7.9 lone-station beyond", told(shown.get(shown.size() - 1)), "a single spot may be a misread");
    }

    @Test
    void listsInWalkingOrderWhenAsked() {
        model.orderProperty().set(Order.WALKING);
        assertEquals(List.of("C1 5.0 joint beyond", "C1 10.0 joint unsettled"),
                model.shownProperty().get().stream().limit(2).map(FaultsModelTest::told).toList());
    }

    @Test
    void listsOnlyTheVerdictsAskedFor() {
        model.listed(Verdict.BEYOND).set(false);
        assertEquals(List.of("C1 10.0 joint unsettled"), model.shownProperty().get().stream().map(FaultsModelTest::told).toList());
        model.listed(Verdict.WITHIN).set(true);
        assertEquals(1 + model.count(Verdict.WITHIN), model.shownProperty().get().size());
        assertTrue(model.count(Verdict.WITHIN) > 0);
    }

    @Test
    void countsAsTheCommandLineDoes() {
        for (Verdict verdict : Verdict.values()) {
            assertEquals(desk.survey().judgementProperty().get().count(verdict), model.count(verdict), verdict.code());
        }
    }

    @Test
    void whoComesHereFirstSeesTheWorst() {
        assertNull(model.chosenProperty().get());
        model.arrive();
        assertEquals("C5 2.5 off-target beyond", told(model.chosenProperty().get()));
        assertEquals(new Spot("C5", 2.5), desk.spotProperty().get());
    }

    @Test
    void whoComesFromAPlaceStaysThere() {
        desk.spotProperty().set(new Spot("C1", 3.3));
        model.arrive();
        assertEquals(new Spot("C1", 3.3), desk.spotProperty().get());
        assertNull(model.chosenProperty().get());
    }

    @Test
    void whatIsTappedOnTheStripIsChosenAndListedWhateverItsVerdict() {
        assertTrue(model.shownProperty().get().stream().noneMatch(finding -> told(finding).equals("C1 15.0 joint within")));
        desk.spotProperty().set(new Spot("C1", 15));
        assertEquals("C1 15.0 joint within", told(model.chosenProperty().get()));
        assertTrue(model.shownProperty().get().contains(model.chosenProperty().get()));
    }

    @Test
    void theChosenOneStaysChosenWhenReadingsComeIn() {
        model.choose(at("C1", 10));
        Finding before = model.chosenProperty().get();
        DemoDesk.read(desk, "C1", 9.7, "0.4622", "0.4090");
        Finding now = model.chosenProperty().get();
        assertFalse(now == before, "judged anew");
        assertTrue(now.sameAs(before));
        assertTrue(model.shownProperty().get().contains(now));
    }

    @Test
    void theChosenOneStaysListedWhenItIsSettled() {
        model.choose(at("C1", 10));
        desk.survey().change(survey -> survey.with(survey.limits().withNeighbourSteps(7)));
        assertEquals("C1 10.0 joint within", told(model.chosenProperty().get()));
        assertTrue(model.shownProperty().get().contains(model.chosenProperty().get()));
    }

    @Test
    void aFaultThatIsGoneIsChosenNoMore() {
        model.choose(at("C4", 7.9));
        desk.survey().change(survey -> survey.with(survey.limits().withNeighbourSteps(40)));
        assertTrue(model.shownProperty().get().stream().noneMatch(finding -> finding.kind() == FaultKind.LONE_STATION));
        assertNull(model.chosenProperty().get());
    }

    @Test
    void goesToTheWalkWithTheChosenPlace() {
        model.choose(at("C3", 21));
        model.walkThere();
        assertEquals(Place.WALK, desk.placeProperty().get());
        assertEquals(new Spot("C3", 21), desk.spotProperty().get());
    }

    @Test
    void withoutASurveyThereIsNothing() {
        FaultsModel empty = new FaultsModel(DemoDesk.empty());
        empty.arrive();
        assertEquals(List.of(), empty.shownProperty().get());
        assertNull(empty.chosenProperty().get());
    }
}
