package covewalk.report.punch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.file.punch.PunchState;
import covewalk.verdict.Fault;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reach to either side is 0.6 m (common practice, no source): items up to 1.2 m apart can share a stop. */
class LadderStopsTest {

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '|', textBlock = """
        # cove   | items at           | stops: items @ position            | why
        open     | 5                  | 1 @ 5.00                           | one item is one stop, where it is
        open     | 5 6.1              | 1 2 @ 5.55                         | both within reach of the middle
        open     | 5 6.3              | 1 @ 5.00; 2 @ 6.30                 | 1.3 m apart: nobody overreaches
        open     | 5 5.8 6.6          | 1 2 @ 5.40; 3 @ 6.60               | a chain does not stretch the arm
        open     | 17.9 18.8          | 1 @ 17.90; 2 @ 18.80               | never across a length without light, a corner perhaps
        open     | 18.35 18.8         | 1 2 @ 18.58                        | but the joint over the gap and what follows it are one place
        closed   | 0.3 24.9           | 1 2 @ 0.10                         | round the end of a ring
        closed   | 0.3 24.0           | 1 @ 0.30; 2 @ 24.00                | unless that is too far
        closed   | 24.2 24.9          | 1 2 @ 24.55                        | near the end is not round it
        """)
    void groupsWhatIsWithinReach(String cove, String at, String stops, String why) {
        List<PunchItem> items = items(cove.equals("closed") ? ring() : wall(), at);
        assertEquals(stops, LadderStops.of(items).stream().map(LadderStopsTest::said).collect(Collectors.joining("; ")));
    }

    private static String said(LadderStop stop) {
        return stop.items().stream().map(item -> String.valueOf(item.number())).collect(Collectors.joining(" "))
                + String.format(Locale.ROOT, " @ %.2f", stop.positionM());
    }

    private static List<PunchItem> items(Cove cove, String positions) {
        double[] at = Arrays.stream(positions.split(" ")).mapToDouble(Double::parseDouble).toArray();
        Fault any = Sample.judgement().coves().get(0).faults().get(0);
        return IntStream.range(0, at.length).mapToObj(i -> new PunchItem(cove, new Fault(any.kind(), at[i], at[i], at[i],
                any.placements(), any.difference(), any.limitSteps(), any.confidence(), any.verdict(), any.hint(), any.settle(),
                any.budget(), any.notes()), List.of(), List.of(), PunchState.open(i + 1))).toList();
    }

    private static Cove wall() {
        return cove(false, List.of(placement(0, 18.2), placement(18.5, 25)));
    }

    private static Cove ring() {
        return cove(true, List.of(placement(0, 25)));
    }

    private static Cove cove(boolean closed, List<Placement> placements) {
        return new Cove("C1", "", 25, closed, "", OptionalDouble.empty(), "", Optional.empty(), List.of(), placements);
    }

    private static Placement placement(double fromM, double toM) {
        return new Placement("R1", fromM, toM, Placement.KnownFrom.SEEN, "");
    }
}
