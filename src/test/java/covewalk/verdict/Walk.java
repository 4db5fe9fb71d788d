package covewalk.verdict;

import covewalk.colour.CctDuv;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.survey.Reading;
import covewalk.survey.Reads;
import covewalk.survey.Reel;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
import covewalk.survey.StatedColour;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** A made-up walk along one cove whose true colours are known. Offsets are in steps along u'. */
final class Walk {

    static final UvPrime WHITE = new CctDuv(2700, 0).toUvPrime();

    private final List<Placement> placements = new ArrayList<>();
    private final List<Reel> reels = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final Random random;
    private final double noiseUv;
    boolean closed;
    double declaredUv = 0.0003;
    OptionalDouble targetSteps = OptionalDouble.empty();
    Limits.ErrorPer errorPer = Limits.ErrorPer.JOINT;
    int decimals = 6;
    double smearM;

    Walk(long seed, double noiseUv) {
        this.random = new Random(seed);
        this.noiseUv = noiseUv;
    }

    Walk reel(double fromM, double toM, String lot) {
        String id = "R" + (reels.size() + 1);
        reels.add(new Reel(id, "Example Lamps", "EX-24", "", OptionalInt.of(2700), "a", lot, "S" + id, "", "",
                OptionalDouble.of(5), OptionalDouble.of(3), Optional.empty()));
        placements.add(new Placement(id, fromM, toM, Placement.KnownFrom.SEEN, ""));
        return this;
    }

    /** Stations from here to there, each offset from the white by so many steps. */
    Walk read(double fromM, double toM, double everyM, int repeats, DoubleUnaryOperator stepsAt) {
        int stations = (int) Math.round((toM - fromM) / everyM) + 1;
        for (int i = 0; i < stations; i++) {
            for (int k = 0; k < repeats; k++) {
                add(fromM + i * everyM, stepsAt.applyAsDouble(fromM + i * everyM), 500, 1);
            }
        }
        return this;
    }

    Walk add(double atM, double steps, double lux, int round) {
        Xy xy = WHITE.plus(steps * UvPrime.STEP + noiseUv * random.nextGaussian(), noiseUv * random.nextGaussian()).toXy();
        readings.add(new Reading("r" + (readings.size() + 1), "C1", typed(atM, 3), Role.WALK, "A", round,
                Optional.of(TypedColour.ofXy(typed(xy.x(), decimals), typed(xy.y(), decimals))),
                Optional.of(typed(lux, 0)), "", "", "", 0));
        return this;
    }

    private static Typed typed(double value, int decimals) {
        return Typed.of(String.format(Locale.ROOT, "%." + decimals + "f", value)).orElseThrow();
    }

    Survey survey() {
        double length = placements.stream().mapToDouble(Placement::toM).max().orElseThrow();
        Cove cove = new Cove("C1", "", length, closed, "", OptionalDouble.of(3), "",
                Optional.of(new StatedColour.ByCctDuv(new CctDuv(2700, 0))), List.of(new Feed(0, "D1", "L1")), placements);
        SetUp setUp = new SetUp("A", "", "", Optional.empty(), declaredUv, 0.0015, 0.0005, Reads.STRIP, smearM, 100, Set.of());
        return new Survey(new Site("Test", ""), new Visit(Optional.empty(), "", Optional.empty(), OptionalInt.of(45), ""),
                List.of(setUp), new Limits(2, targetSteps, "", StepRule.UV_CIRCLE, 0.05, errorPer), reels,
                List.of(cove), Optional.empty());
    }

    List<Reading> log() {
        return readings;
    }

    CoveJudgement judged() {
        return new Judge().judge(survey(), readings).coves().get(0);
    }
}
