package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.verdict.Judge;
import covewalk.verdict.plan.Stop;
import covewalk.verdict.plan.WalkPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WalkModelTest {

    @TempDir
    Path folder;
    private TestWalk walk;

    @BeforeEach
    void open() {
        walk = TestWalk.in(NewSurvey.in(folder));
    }

    private WalkModel model() {
        return walk.model();
    }

    private double at() {
        return model().way().aim().atM();
    }

    /** Where the plan wants readings, each position as often as it is to be read. */
    private List<Double> planned() {
        return planned(model().survey().survey().firstSetUp());
    }

    private List<Double> planned(SetUp setUp) {
        return WalkPlan.of(new Judge().judge(model().survey().survey(), List.of()), setUp).coves().get(0).stops().stream()
                .filter(stop -> stop.kind() == Stop.Kind.WALK)
                .flatMap(stop -> java.util.Collections.nCopies(stop.readings(), stop.positionM()).stream()).toList();
    }

    @Test
    void followsThePlanOfTheSetUpThatIsChosen() {
        walk = TestWalk.in(NewSurvey.withACoarseMeterToo(folder.resolve("two")));
        SetUp coarse = model().survey().survey().setUp("B").orElseThrow();
        assertTrue(planned(coarse).size() > planned().size(), "a coarser meter reads more often");
        walk.readings(1);
        model().way().change(way -> way.use("B"));
        for (double expected : planned(coarse)) {
            assertEquals(expected, at());
            walk.readings(1);
        }
        assertEquals(null, model().way().aim());
    }

    @Test
    void anotherSetUpAfterTheEndBeginsTheCoveAnew() {
        walk = TestWalk.in(NewSurvey.withACoarseMeterToo(folder.resolve("two")));
        walkTheFirstCove();
        assertEquals(null, model().way().aim());
        model().way().change(way -> way.use("B"));
        assertEquals("B", model().way().guide().setUp());
        assertEquals(planned(model().survey().survey().setUp("B").orElseThrow()).get(0), at());
    }

    private void walkTheFirstCove() {
        walk.readings(planned().size());
    }

    // ---- the way ----

    @Test
    void leadsThroughThePlanFromTheDatumOn() {
        for (double expected : planned()) {
            assertEquals(expected, at());
            walk.readings(1);
        }
        assertEquals(null, model().way().aim());
    }

    @Test
    void leadsFromTheFarEndWhereThatIsWanted() {
        model().way().change(way -> way.turn(true));
        List<Double> planned = planned();
        for (int i = planned.size() - 1; i >= 0; i--) {
            assertEquals(planned.get(i), at());
            walk.readings(1);
        }
    }

    @Test
    void withoutAPlanThereIsAStationEverySoManyMetres() {
        walkTheFirstCove();
        model().ending().offers().get(0).take().run();
        assertEquals("C2", model().way().aim().cove());
        for (double expected : List.of(0.25, 0.75, 1.25, 1.75)) {
            assertEquals(expected, at());
            walk.readings(1);
        }
        assertEquals(null, model().way().aim());
    }

    @Test
    void theIntervalCanBeChosen() {
        model().begin(model().survey().survey().coves().get(1));
        model().way().change(way -> way.every(1));
        assertEquals(0.5, at());
    }

    @Test
    void saysTheStationInWords() {
        walk.at(5.5);
        assertEquals("Cove C1, 5.5 m, in reel R2, 0.5 m past the joint", model().says().whereProperty().get());
        walk.at(4.8);
        assertEquals("Cove C1, 4.8 m, in reel R1, 0.2 m before the joint", model().says().whereProperty().get());
    }

    @Test
    void saysWhereAReadingWouldNotCount() {
        walk.at(5.05);
        assertEquals("Reading 1 of 1 here, round 1. Within 0.1 m of the joint the meter mixes both reels: this does not count for its verdict.",
                model().says().turnProperty().get());
    }

    @Test
    void aStationInBetweenIsReadAndTheWalkGoesOnBehindIt() {
        walk.at(1.23).readings(1);
        assertEquals("1.23", walk.lastOnDisk().positionM().text());
        assertEquals(planned().stream().filter(at -> at > 1.23).findFirst().orElseThrow(), at());
    }

    @Test
    void aPositionOutsideTheCoveOrNoneAtAllIsNotTaken() {
        double before = at();
        assertEquals("Cove C1 ends at 10 m.", model().goTo("11"));
        assertEquals("here is no length. Type metres such as 6.5, or 21' 4\".", model().goTo("here"));
        assertEquals(before, at());
    }

    @Test
    void aPositionMayBeTypedWithACommaOrInFeet() {
        assertEquals("", model().goTo("6,50"));
        assertEquals("6.50", model().way().aim().positionM().text());
        assertEquals("", model().goTo("21' 4\""));
        assertEquals(6.5024, at(), 1e-9);
    }

    @Test
    void backGoesToTheStationBeforeAndSkipToTheNext() {
        double first = at();
        model().way().skip();
        double second = at();
        assertTrue(second > first);
        model().way().back();
        assertEquals(first, at());
        model().way().back();
        assertEquals(first, at());
    }

    @Test
    void whatIsSkippedIsNotProposedAgain() {
        double skipped = at();
        model().way().skip();
        walk.readings(planned().size() - (int) planned().stream().filter(place -> place == skipped).count());
        assertEquals(null, model().way().aim());
        assertTrue(model().says().whereProperty().get().endsWith("1 station was skipped."), model().says().whereProperty().get());
    }

    @Test
    void oneMoreReadingAtTheLastStation() {
        double first = at();
        walk.readings((int) planned().stream().filter(place -> place == first).count());
        assertTrue(at() > first);
        model().way().repeatHere();
        assertEquals(first, at());
        walk.readings(1);
        assertTrue(at() > first);
    }

    @Test
    void atTheEndOfACoveItSaysSoAndEnterGoesOnToTheNext() {
        walkTheFirstCove();
        assertTrue(model().says().whereProperty().get().startsWith("Cove C1 is read: "));
        model().enter();
        assertEquals("C2", model().way().aim().cove());
    }

    @Test
    void whatIsNotSettledCanBeReadOnAtOnce() {
        while (model().way().aim() != null) {
            if (at() < 0.25 || at() > 9.75) {
                walk.read(at() < 5 ? "0.4580" : "0.4550", "0.4103");
            } else {
                model().way().skip();
            }
        }
        assertEquals(List.of("walk-next-cove", "walk-settle", "walk-faults"), model().ending().offers().stream().map(Offer::id).toList());
        assertTrue(model().ending().offers().get(1).button().startsWith("Read on in cove C1: "));
        model().ending().offers().get(1).take().run();
        assertEquals("C1", model().way().aim().cove());
        walk.at(1).readings(1);
        assertEquals(2, walk.lastOnDisk().round());
    }

    @Test
    void afterTheLastCoveItLeadsToTheFaults() {
        walkTheFirstCove();
        model().enter();
        walk.readings(4);
        assertEquals("walk-faults", model().ending().offers().get(model().ending().offers().size() - 1).id());
        model().ending().offers().stream().filter(offer -> offer.id().equals("walk-faults")).forEach(offer -> offer.take().run());
        assertEquals(Place.FAULTS, walk.desk().placeProperty().get());
    }

    @Test
    void withoutACoveItSaysWhatToDo() {
        TestWalk empty = TestWalk.in(NewSurvey.withoutCoves(folder.resolve("empty")));
        assertEquals("No cove is described yet. Describe one, then walk it.", empty.model().says().whereProperty().get());
        empty.model().enter();
        assertEquals(Place.SITE, empty.desk().placeProperty().get());
    }

    @Test
    void reopeningGoesBackToTheSameStation() {
        walk.readings(3);
        Aim before = model().way().aim();
        walk.close();
        assertEquals(before, TestWalk.in(folder.resolve("new")).model().way().aim());
    }

    @Test
    void reopeningAfterAStationInBetweenGoesOnBehindIt() {
        walk.at(1.23).readings(1);
        Aim before = model().way().aim();
        walk.close();
        assertEquals(before, TestWalk.in(folder.resolve("new")).model().way().aim());
    }

    @Test
    void whatWasLookedAtElsewhereIsOfferedAndNotGoneToUnasked() {
        Aim before = model().way().aim();
        walk.desk().spotProperty().set(new covewalk.app.desk.Spot("C1", 5.0));
        assertEquals(before, model().way().aim());
        model().way().follow(model().way().lookedAtElsewhere().orElseThrow());
        assertEquals(5.0, at());
        assertTrue(model().way().lookedAtElsewhere().isEmpty());
    }

    // ---- keeping ----

    @Test
    void keepsTheDigitsAsTypedAndOnDiskBeforeItSaysSo() {
        walk.type("0.4580", "0.4103").model().enter();
        Reading kept = walk.lastOnDisk();
        assertEquals("0.4580", kept.colour().orElseThrow().xy().orElseThrow().first().text());
        assertEquals("2026-10-05T18:30", kept.takenAt());
        assertEquals("Kept, 0.2 m", model().says().keptProperty().get());
        assertTrue(model().entry().isBlank());
    }

    @Test
    void whatWasTypedStaysUntilItIsOnDisk() throws IOException {
        Path pulled = folder.resolve("pulled");
        Files.move(folder.resolve("new"), pulled);
        walk.type("0.4580", "0.4103").model().enter();
        assertEquals("0.4580", model().entry().first().get());
        assertEquals("", model().says().keptProperty().get());
        assertEquals("1 reading is not on disk.", model().says().heldProperty().get());
        Files.move(pulled, folder.resolve("new"));
        model().survey().tryAgain();
        assertEquals("0.", model().entry().first().get());
        assertEquals("", model().says().heldProperty().get());
        assertEquals("Kept, 0.2 m", model().says().keptProperty().get());
    }

    @Test
    void theNextReadingCanBeTypedWhileOneIsNotOnDisk() throws IOException {
        Files.move(folder.resolve("new"), folder.resolve("pulled"));
        walk.type("0.4580", "0.4103").model().enter();
        model().entry().first().set("0.4");
        assertEquals("0.", model().entry().second().get());
        walk.readings(1);
        assertEquals("2 readings are not on disk.", model().says().heldProperty().get());
    }

    @Test
    void aNoteGoesWithTheNextReadingOnly() {
        model().entry().note().set(" paint patch above ");
        walk.readings(2);
        assertEquals(List.of("paint patch above", ""), walk.onDisk().stream().map(Reading::note).toList());
    }

    @Test
    void luxIsOptional() {
        walk.readings(1);
        model().entry().lux().set("1505");
        walk.readings(1);
        assertEquals(List.of("", "1505"), walk.onDisk().stream().map(reading -> reading.lux().map(lux -> lux.text()).orElse("")).toList());
    }

    @Test
    void theNumbersStandBelow() {
        walk.at(1).readings(1);
        model().way().repeatHere();
        model().entry().lux().set("1505");
        walk.readings(1);
        assertEquals("u' 0.2616   v' 0.5274   CCT 2728 K   Duv 0.0000   1505 lx   round 1, reading 2 here",
                model().says().numbersProperty().get().replaceAll("Duv [+\u2212]?0.000[0-9]", "Duv 0.0000").replaceAll("CCT 27[0-9]+", "CCT 2728")
                        .replaceAll("u' 0.26[0-9]+   v' 0.52[0-9]+", "u' 0.2616   v' 0.5274"));
    }

    // ---- the neighbour ----

    @Test
    void saysHowFarTheNeighbourIsAtOnce() {
        walk.at(1).read("0.4580", "0.4103").at(2).read("0.4600", "0.4090");
        String says = model().says().neighbour().get().says();
        assertTrue(says.matches("1\\.[0-9] steps from the last station, towards warmer, pinker; .*"), says);
    }

    @Test
    void theFirstStationHasNoneYet() {
        walk.readings(1);
        assertEquals("First station of this cove: nothing to compare yet", model().says().neighbour().get().says());
    }

    @Test
    void aJumpIsAskedAboutKeptOnASecondEnterAndReadOnceMore() {
        walk.at(1).readings(1).at(2).type("0.4650", "0.4103").model().enter();
        assertTrue(walk.question().endsWith(" steps from the last station, over the limit of 2. Look at the meter again."), walk.question());
        assertEquals(1, walk.onDisk().size());
        model().enter();
        assertEquals(2, walk.onDisk().size());
        assertEquals(2.0, at());
        assertTrue(walk.question().startsWith("That was a jump."), walk.question());
        walk.readings(1);
        assertTrue(at() > 2);
    }

    @Test
    void aRepeatFarFromTheFirstReadingOfItsStationIsAskedAbout() {
        walk.at(1).readings(1).at(1).type("0.4650", "0.4103").model().enter();
        assertTrue(walk.question().contains("at this very place"), walk.question());
    }

    @Test
    void aCorrectedSlipNeedsNoSecondEnter() {
        walk.type("0.4103", "0.4580").model().enter();
        assertEquals(0, walk.onDisk().size());
        walk.type("0.4580", "0.4103");
        assertEquals("", walk.question());
        model().enter();
        assertEquals(1, walk.onDisk().size());
    }

    // ---- other readings ----

    @Test
    void theReferenceSpotIsReadAndTheWalkGoesOnWhereItWas() {
        Aim before = model().way().aim();
        model().way().reference();
        assertEquals("Reference spot: Cove C1, 2.5 m, in reel R1, 2.5 m before the joint", model().says().whereProperty().get());
        walk.readings(1);
        assertEquals(Role.REFERENCE, walk.lastOnDisk().role());
        assertEquals("Reference spot read for the first time", model().says().neighbour().get().says());
        assertEquals(before, model().way().aim());
    }

    @Test
    void theReferenceSpotIsDueAfterSoManyReadingsOrMinutes() {
        assertTrue(model().says().dueNowProperty().get());
        model().way().reference();
        walk.readings(1);
        assertFalse(model().says().dueNowProperty().get());
        assertEquals("Reference spot in 25 readings or 30 minutes.", model().says().dueProperty().get());
        walk.minutes(29);
        walk.readings(1);
        assertFalse(model().says().dueNowProperty().get());
        walk.minutes(1);
        walk.readings(1);
        assertEquals("Reference spot due: 30 minutes since the last visit.", model().says().dueProperty().get());
        model().way().reference();
        walk.readings(1);
        walk.at(3);
        for (int i = 0; i < 25; i++) {
            walk.at(3).readings(1);
        }
        assertEquals("Reference spot due: 25 readings since the last visit.", model().says().dueProperty().get());
    }

    @Test
    void aDarkReadingAsksForItsLuxAndMayBeOfAnyColour() {
        Aim before = model().way().aim();
        model().way().dark();
        walk.type("0.4412", "0.4453").model().enter();
        assertEquals("A dark reading without lux says nothing. Type the lux, 0 if there is none.", walk.question());
        model().entry().lux().set("1");
        model().enter();
        assertEquals(Role.DARK, walk.lastOnDisk().role());
        assertEquals(before, model().way().aim());
    }

    @Test
    void skipGivesUpAReferenceReading() {
        Aim before = model().way().aim();
        model().way().reference();
        model().way().skip();
        assertEquals(before, model().way().aim());
        assertEquals(0, walk.onDisk().size());
    }

    @Test
    void theLastReadingIsTakenBackByARowThatSaysSo() {
        walk.at(1).readings(1);
        model().takeBack();
        Reading row = walk.lastOnDisk();
        assertTrue(row.withdraws());
        assertEquals("1", row.replaces());
        assertEquals("taken back", row.note());
        assertEquals(1.0, at());
        assertEquals(2, walk.onDisk().size());
        assertTrue(model().latest().isEmpty());
    }

    @Test
    void anEarlierReadingIsCorrectedInItsPlaceAndTime() {
        walk.at(1).read("0.4580", "0.4130");
        walk.minutes(10);
        walk.at(2).readings(1);
        model().correct(model().correctable().get(0));
        assertEquals("0.4130", model().entry().second().get());
        walk.read("0.4580", "0.4103");
        Reading row = walk.lastOnDisk();
        assertEquals("1", row.replaces());
        assertEquals("1.0", row.positionM().text());
        assertEquals("2026-10-05T18:30", row.takenAt());
        assertEquals(2, model().correctable().size());
        assertTrue(at() > 2);
    }

    // ---- the meter ----

    @Test
    void theMeterIsTakenFromTheLogElseFromWhatIsRemembered() {
        assertEquals(new MeterShows(Shown.XY, 4, false), model().entry().meter());
        model().use(new MeterShows(Shown.CCT, 5, true));
        assertEquals("cct 5 lux", walk.desk().memoryProperty().get().meterShows());
        assertEquals(new MeterShows(Shown.CCT, 5, true),
                TestWalk.with(NewSurvey.in(folder.resolve("other")), "cct 5 lux").model().entry().meter());
        model().use(new MeterShows(Shown.UV, 4, false));
        walk.read("0.2616", "0.5274").close();
        assertEquals(new MeterShows(Shown.UV, 4, false), TestWalk.with(folder.resolve("new"), "cct 5 lux").model().entry().meter());
    }

    @Test
    void cctAndDuvAreKeptWithTheirSign() {
        model().use(new MeterShows(Shown.CCT, 4, false));
        walk.type("2712", "-0.0012").model().enter();
        assertEquals("-0.0012", walk.lastOnDisk().colour().orElseThrow().cctDuv().orElseThrow().second().text());
        walk.type("2712", "+0.0012").model().enter();
        model().enter();
        assertEquals("0.0012", walk.lastOnDisk().colour().orElseThrow().cctDuv().orElseThrow().second().text());
    }

    @Test
    void germanSaysItInGerman() {
        TestWalk german = TestWalk.in(NewSurvey.in(folder.resolve("de")), java.util.Locale.GERMAN);
        german.at(5.5);
        assertEquals("Voute C1, 5,5 m, in Rolle R2, 0,5 m hinter dem Stoß", german.model().says().whereProperty().get());
        german.at(1).read("0.4580", "0.4103").at(2).read("0.4600", "0.4090");
        String says = german.model().says().neighbour().get().says();
        assertTrue(says.matches("1,[0-9] Schritte von der letzten Messstelle, Richtung wärmer, rosiger; .*"), says);
    }

    @Test
    void lengthsAreInFeetWhereThatIsWanted() {
        TestWalk feet = TestWalk.inFeet(NewSurvey.in(folder.resolve("ft")));
        feet.model().goTo("21' 4\"");
        assertEquals("Cove C1, 21 ft 4 in, in reel R2, 4 ft 11 1/4 in past the joint", feet.model().says().whereProperty().get());
    }
}
