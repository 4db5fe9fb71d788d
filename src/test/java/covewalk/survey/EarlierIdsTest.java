package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ids of a log, and which of them come twice. */
class EarlierIdsTest {

    private static final TypedColour COLOUR = TypedColourCheckTest.colour("xy", "0.4578", "0.4101");

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # ids in the order of the log | which are new | why
        1 2 3 4         | yes yes yes yes | rising as programs number them
        8 9 10 11       | yes yes yes yes | by number, not as words
        1 2 2 3         | yes yes no yes  | twice in a row
        1 2 3 1         | yes yes yes no  | the first of all again
        1 3 2 3 4       | yes yes yes no yes | behind one that is out of order
        9 a B aa 9      | yes yes yes yes no | words as somebody typed them
        1 01 1          | yes yes no      | a nought makes another id
        """)
    void knowsWhichAreNew(String ids, String expected, String why) {
        EarlierIds earlier = new EarlierIds(Stream.of(ids.split(" ")).map(EarlierIdsTest::reading).toList());
        List<String> seen = Stream.of(ids.split(" ")).map(id -> earlier.takeNext() ? "yes" : "no").toList();
        assertEquals(List.of(expected.split(" ")), seen, why);
    }

    @RepeatedTest(50)
    void knowsWhatATableOfAllWouldKnow(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        int rising = random.nextInt(30);
        List<Reading> log = IntStream.range(0, 40).map(i -> i < rising ? 7 * i : random.nextInt(300))
                .mapToObj(Integer::toString).map(EarlierIdsTest::reading).toList();
        EarlierIds earlier = new EarlierIds(log);
        Set<String> all = new HashSet<>();
        for (Reading next : log) {
            String asked = Integer.toString(random.nextInt(300));
            assertEquals(all.contains(asked), earlier.contains(asked), asked);
            assertEquals(all.add(next.id()), earlier.takeNext(), next.id());
        }
    }

    private static Reading reading(String id) {
        return new Reading(id, "C1", Typed.of("1").orElseThrow(), Role.WALK, "A", 1, Optional.of(COLOUR), Optional.empty(),
                "", "", "", 0);
    }
}
