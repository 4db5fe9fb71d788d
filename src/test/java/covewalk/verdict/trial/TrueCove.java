package covewalk.verdict.trial;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.StepPlane;
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
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** A cove whose true colours and true noise are known, and a walk along it. Lengths of colour are in steps. */
final class TrueCove {

    /** How a walk types its readings. */
    enum Digits { XY_6, XY_4, CCT_1_DUV_4, CCT_10_DUV_3 }

    private static final StatedColour TARGET = new StatedColour.ByCctDuv(new CctDuv(3000, 0));

    private final UvPrime white = TARGET.toUvPrime();
    private final Random random;
    private final List<Placement> placements = new ArrayList<>();
    private final List<Reel> reels = new ArrayList<>();
    private final List<Reading> log = new ArrayList<>();

    double meterSteps = 0.3;
    double declaredSteps = 0.3;
    double scatterSteps;
    double scatterRatio = 1;
    double scatterAngle;
    StepRule rule = StepRule.UV_CIRCLE;
    double limit = 2;
    boolean closed;
    Limits.ErrorPer errorPer = Limits.ErrorPer.JOINT;
    Digits digits = Digits.XY_6;
    double whiteJitterSteps = 3;
    OptionalDouble targetSteps = OptionalDouble.empty();
    OptionalDouble claimedSteps = OptionalDouble.empty();
    private double shiftU;
    private double shiftV;

    TrueCove(long seed) {
        random = new Random(seed);
        random.nextLong();
    }

    /** Where in the diagram the white lies differs from trial to trial, so that rounding falls at random. */
    TrueCove begin() {
        shiftU = whiteJitterSteps * random.nextGaussian() * UvPrime.STEP;
        shiftV = whiteJitterSteps * random.nextGaussian() * UvPrime.STEP;
        return this;
    }

    TrueCove reel(double fromM, double toM) {
        String id = "R" + (reels.size() + 1);
        reels.add(new Reel(id, "Example", "EX", "", OptionalInt.of(3000), "", "", id, "", "", OptionalDouble.empty(),
                claimedSteps, claimedSteps.isPresent() ? Optional.of(TARGET) : Optional.empty()));
        placements.add(new Placement(id, fromM, toM, Placement.KnownFrom.SEEN, ""));
        return this;
    }

    /** One station: its true colour, so many steps from the white in a direction of u', v'. */
    TrueCove station(double atM, double steps, double angle, int readings, int round) {
        double[] scatter = scatter();
        double u = steps * Math.cos(angle) * unitAlong(angle) + scatter[0];
        double v = steps * Math.sin(angle) * unitAlong(angle) + scatter[1];
        for (int i = 0; i < readings; i++) {
            read(atM, u * UvPrime.STEP, v * UvPrime.STEP, round);
        }
        return this;
    }

    /** Stations from here to there, so many, evenly spaced, each read once; their colour goes by the position. */
    TrueCove walk(double fromM, double toM, int stations, DoubleUnaryOperator stepsAt, double angle) {
        for (int i = 0; i < stations; i++) {
            double atM = fromM + (toM - fromM) * (i + 0.5) / stations;
            station(atM, stepsAt.applyAsDouble(atM), angle, 1, 1);
        }
        return this;
    }

    /** One reading of a colour that is known itself, as when a station seen before is read again. */
    TrueCove again(double atM, UvPrime colour, int round) {
        double[] scatter = scatter();
        log(atM, colour.plus(scatter[0] * UvPrime.STEP, scatter[1] * UvPrime.STEP), round);
        return this;
    }

    /** The length in 0.0011 of u'v' of one step of the rule in this direction. */
    private double unitAlong(double angle) {
        return 1 / (plane().steps(Math.cos(angle), Math.sin(angle)) * UvPrime.STEP);
    }

    private StepPlane plane() {
        return StepPlane.of(rule, 3000);
    }

    private double[] scatter() {
        double a = scatterSteps * random.nextGaussian();
        double b = scatterSteps / scatterRatio * random.nextGaussian();
        return new double[] {a * Math.cos(scatterAngle) - b * Math.sin(scatterAngle),
            a * Math.sin(scatterAngle) + b * Math.cos(scatterAngle)};
    }

    private void read(double atM, double du, double dv, int round) {
        log(atM, white.plus(shiftU + du, shiftV + dv), round);
    }

    private void log(double atM, UvPrime truth, int round) {
        double noise = meterSteps * UvPrime.STEP;
        UvPrime colour = truth.plus(noise * random.nextGaussian(), noise * random.nextGaussian());
        log.add(new Reading("r" + (log.size() + 1), "C1", typed(atM, 3), Role.WALK, "A", round,
                Optional.of(typed(colour)), Optional.empty(), "", "", "", 0));
    }

    /** A reading far off everything, as of a meter held wrongly. */
    TrueCove wild(double atM, double steps) {
        double angle = 2 * Math.PI * random.nextDouble();
        read(atM, steps * UvPrime.STEP * Math.cos(angle), steps * UvPrime.STEP * Math.sin(angle), 1);
        return this;
    }

    private TypedColour typed(UvPrime colour) {
        Xy xy = colour.toXy();
        CctDuv white = (CctDuv) ColourTemperature.of(colour);
        return switch (digits) {
            case XY_6 -> TypedColour.ofXy(typed(xy.x(), 6), typed(xy.y(), 6));
            case XY_4 -> TypedColour.ofXy(typed(xy.x(), 4), typed(xy.y(), 4));
            case CCT_1_DUV_4 -> TypedColour.ofCctDuv(typed(white.cctK(), 0), typed(white.duv(), 4));
            case CCT_10_DUV_3 -> TypedColour.ofCctDuv(tens(white.cctK()), typed(white.duv(), 3));
        };
    }

    /** As a meter shows it that counts in tens of kelvin: written so that the last digit stands for ten. */
    private static Typed tens(double cctK) {
        return Typed.of(String.format(Locale.ROOT, "%.0fe1", cctK / 10)).orElseThrow();
    }

    private static Typed typed(double value, int decimals) {
        return Typed.of(String.format(Locale.ROOT, "%." + decimals + "f", value)).orElseThrow();
    }

    Survey survey() {
        double length = placements.stream().mapToDouble(Placement::toM).max().orElseThrow();
        Cove cove = new Cove("C1", "", length, closed, "", OptionalDouble.empty(), "",
                Optional.of(TARGET), List.of(new Feed(0, "", "")), placements);
        SetUp setUp = new SetUp("A", "", "", Optional.empty(), declaredSteps * UvPrime.STEP, 0.0015, 0.0005, Reads.STRIP,
                0, 100, Set.of());
        return new Survey(new Site("", ""), new Visit(Optional.empty(), "", Optional.empty(), OptionalInt.empty(), ""),
                List.of(setUp), new Limits(limit, targetSteps, "", rule, 0.05, errorPer),
                reels, List.of(cove), Optional.empty());
    }

    List<Reading> log() {
        return log;
    }

    CoveJudgement judged() {
        return judgement().coves().get(0);
    }

    Judgement judgement() {
        return new Judge().judge(survey(), log);
    }

    double uniform(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }
}
