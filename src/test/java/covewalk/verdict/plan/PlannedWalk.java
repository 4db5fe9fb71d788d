package covewalk.verdict.plan;

import covewalk.colour.CctDuv;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import covewalk.survey.Cove;
import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.survey.Reading;
import covewalk.survey.Reads;
import covewalk.survey.Reel;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
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

/** A cove whose true colours are known, read as a plan says with the noise that the plan expects. */
final class PlannedWalk {

    private static final UvPrime WHITE = new CctDuv(2700, 0).toUvPrime();

    private final Random random;
    private final double repeatabilityUv;
    private final double smearM;
    private final List<Reel> reels = new ArrayList<>();
    private final List<Placement> placements = new ArrayList<>();
    private final List<UvPrime> colours = new ArrayList<>();

    PlannedWalk(long seed, double repeatabilityUv, double smearM) {
        this.random = new Random(seed);
        random.nextLong();
        this.repeatabilityUv = repeatabilityUv;
        this.smearM = smearM;
    }

    /** Another reel at the end, so many steps from the white, in any direction. */
    PlannedWalk reel(double lengthM, double steps) {
        String id = "R" + (reels.size() + 1);
        reels.add(new Reel(id, "Example", "EX", "", OptionalInt.of(2700), "", "", id, "", "", OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty()));
        double from = placements.isEmpty() ? 0 : placements.get(placements.size() - 1).toM();
        placements.add(new Placement(id, from, from + lengthM, Placement.KnownFrom.SEEN, ""));
        double angle = 2 * Math.PI * random.nextDouble();
        colours.add(WHITE.plus(steps * UvPrime.STEP * Math.cos(angle), steps * UvPrime.STEP * Math.sin(angle)));
        return this;
    }

    boolean isEmpty() {
        return reels.isEmpty();
    }

    Survey survey() {
        double length = placements.get(placements.size() - 1).toM();
        SetUp setUp = new SetUp("A", "", "", Optional.empty(), repeatabilityUv, 0.0015, 0.0005, Reads.STRIP, smearM, 100, Set.of());
        Cove cove = new Cove("C1", "", length, false, "", OptionalDouble.of(3), "", Optional.empty(), List.of(), placements);
        return new Survey(new Site("", ""), new Visit(Optional.empty(), "", Optional.empty(), OptionalInt.empty(), ""),
                List.of(setUp), new Limits(2, OptionalDouble.empty(), "", StepRule.UV_CIRCLE, 0.05, Limits.ErrorPer.JOINT),
                reels, List.of(cove), Optional.empty());
    }

    List<Reading> read(WalkPlan plan) {
        List<Reading> log = new ArrayList<>();
        for (Stop stop : plan.coves().get(0).stops()) {
            if (stop.kind() == Stop.Kind.WALK) {
                UvPrime here = near(colours.get(reels.indexOf(reel(stop.reel()))), ExpectedNoise.USUAL_SCATTER_STEPS * UvPrime.STEP);
                for (int i = 0; i < stop.readings(); i++) {
                    log.add(reading("r" + log.size(), stop.positionM(), near(here, repeatabilityUv)));
                }
            }
        }
        return log;
    }

    /** One reading, without noise, of the colour that the first reel has. */
    Reading readAt(double positionM) {
        return reading("r0", positionM, colours.get(0));
    }

    private static Reading reading(String id, double positionM, UvPrime colour) {
        Xy xy = colour.toXy();
        return new Reading(id, "C1", typed(positionM, 2), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(typed(xy.x(), 4), typed(xy.y(), 4))), Optional.empty(), "", "", "", 0);
    }

    private Reel reel(String id) {
        return reels.stream().filter(reel -> reel.id().equals(id)).findFirst().orElseThrow();
    }

    private UvPrime near(UvPrime colour, double sd) {
        return colour.plus(sd * random.nextGaussian(), sd * random.nextGaussian());
    }

    private static Typed typed(double value, int decimals) {
        return Typed.of(String.format(Locale.ROOT, "%." + decimals + "f", value)).orElseThrow();
    }
}
