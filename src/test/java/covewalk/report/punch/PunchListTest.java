package covewalk.report.punch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judge;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class PunchListTest {

    private final PunchList list = PunchList.of(Sample.judgement());

    @Test
    void numbersItemsInWalkingOrder() {
        assertEquals(List.of(1, 2, 3, 4), list.items().stream().map(PunchItem::number).toList());
        assertEquals(List.of("C1 5.0", "C1 10.0", "C1 12.75", "C2 7.5"),
                list.items().stream().map(item -> item.cove().id() + " " + item.fault().positionM()).toList());
    }

    @Test
    void putsWhatIsFarthestBeyondFirstAmongTheWorst() {
        assertEquals(List.of(3, 1, 4), list.worst(3).stream().map(PunchItem::number).toList());
    }

    @Test
    void givesEachItemItsPriority() {
        // 4.25 steps are 2.1 times the limit of 2; 3.40 are 1.7 times; six readings settle one, the meter's error none
        assertEquals(List.of(Priority.NEXT, Priority.READ_AGAIN, Priority.FIRST, Priority.AGREE),
                list.items().stream().map(PunchItem::priority).toList());
    }

    @Test
    void takesTheNearestFeed() {
        assertEquals("D1", list.items().get(0).feeds().get(0).driver());
        assertEquals("D2", list.items().get(2).feeds().get(0).driver());
        assertTrue(list.items().get(3).feeds().isEmpty());
    }

    /** In the demonstration's ring the end, at 25 m, is also the start, where D4 feeds; 15 m in C1 lies on a feed. */
    @Test
    void looksForFeedsRoundTheEndOfAClosedCove() throws IOException {
        ReadSurvey read = SurveyFolder.at(Path.of("survey-demo", "reading-rooms")).read();
        PunchList demo = PunchList.of(new Judge().judge(read.survey().orElseThrow(), read.log()));
        PunchItem ring = demo.items().stream().filter(item -> item.cove().id().equals("C2")).findFirst().orElseThrow();
        assertEquals(25, ring.fault().positionM());
        assertEquals(List.of("0.0"), ring.feeds().stream().map(feed -> String.valueOf(feed.atM())).toList());
    }

    /** A joint midway between two feeds: which of them feeds which side is not known, so both are named. */
    @Test
    void namesEveryFeedThatMayFeedThePlace() throws IOException {
        ReadSurvey read = SurveyFolder.at(Path.of("survey-demo", "reading-rooms")).read();
        PunchList demo = PunchList.of(new Judge().judge(read.survey().orElseThrow(), read.log()));
        PunchItem midway = demo.items().get(0);
        assertEquals(5, midway.fault().positionM());
        assertEquals(2, midway.feeds().size());
        assertTrue(new PunchWords(Words.english()).feed(midway)
                .endsWith("more than one may feed this place, isolate and prove dead on each"));
    }

    @Test
    void anUnknownHeightIsTreatedAsHigh() {
        assertTrue(list.items().get(3).atHeight());
        assertTrue(new PunchWords(Words.english()).cautions(list.items().get(3)).get(0).contains("Height not noted"));
    }

    @Test
    void whereWiringIsTouchedTheElectricalCautionStands() {
        assertTrue(list.items().get(0).touchesWiring());
        assertFalse(list.items().get(1).touchesWiring(), "reading again touches nothing");
        assertTrue(String.join(" ", new PunchWords(Words.english()).cautions(list.items().get(0))).contains("isolate, lock off"));
    }

    @Test
    void nothingIsTakenDownOnAnUnsettledVerdict() {
        PunchWords words = new PunchWords(Words.english());
        assertEquals("Before anything is taken down: read 6 times more on each side.", words.toDo(list.items().get(1).fault()));
        assertTrue(words.toDo(list.items().get(3).fault()).startsWith("Take nothing down on this"));
    }

    @Test
    void saysWhatToDoNextInOrder() {
        List<String> next = new NextSteps(Words.english()).of(list);
        assertEquals(List.of("Read cove C3: nothing was read there.", "Read the joints that were not read: cove C2 at 10.00 m.",
                "Read again while the access still stands: item 2.", "Put right first: item 3.", "Then put right: item 1."),
                next.subList(0, 5));
    }
}
