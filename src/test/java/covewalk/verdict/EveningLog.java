package covewalk.verdict;

import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
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
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;

/** A log with a clock, of a cove with two reels of 5 m of one colour, read with a meter that drifts along u'. */
final class EveningLog {

    static final UvPrime WHITE = new UvPrime(0.26, 0.53);
    private static final LocalDateTime START = LocalDateTime.of(2026, 10, 12, 18, 30);

    private final List<Reading> readings = new ArrayList<>();
    private final Random random;
    private final double noiseUv;
    private final double stepsAnHour;
    private double minute;
    boolean clock = true;
    String setUp = "A";
    UvPrime light = WHITE;
    Optional<String> lux = Optional.empty();
    double declaredUv = 0.0003;
    OptionalInt minutesOn = OptionalInt.of(45);
    OptionalDouble leastLux = OptionalDouble.empty();

    EveningLog(long seed, double noiseUv, double stepsAnHour) {
        this.random = new Random(seed);
        this.noiseUv = noiseUv;
        this.stepsAnHour = stepsAnHour;
    }

    EveningLog at(double minutes) {
        minute = minutes;
        return this;
    }

    EveningLog reference() {
        return read(Role.REFERENCE, 1).read(Role.REFERENCE, 1);
    }

    /** Stations each half metre, twice each, half a minute a reading. */
    EveningLog walk(double fromM, double toM) {
        for (double at = fromM; at <= toM + 1e-9; at += 0.5) {
            read(Role.WALK, at).read(Role.WALK, at);
        }
        return this;
    }

    EveningLog read(Role role, double atM) {
        double u = light.u() + minute / 60 * stepsAnHour * UvPrime.STEP + noiseUv * random.nextGaussian();
        readings.add(new Reading("r" + readings.size(), "C1", typed(atM, 2), role, setUp, 1,
                Optional.of(TypedColour.ofUvPrime(typed(u, 5), typed(light.v() + noiseUv * random.nextGaussian(), 5))),
                lux.flatMap(Typed::of), clock ? START.plusSeconds(Math.round(minute * 60)).toString() : "", "", "", 0));
        minute += 0.5;
        return this;
    }

    private static Typed typed(double value, int decimals) {
        return Typed.of(String.format(Locale.ROOT, "%." + decimals + "f", value)).orElseThrow();
    }

    List<Reading> log() {
        return readings;
    }

    Survey survey() {
        List<Placement> placements = List.of(new Placement("R1", 0, 5, Placement.KnownFrom.SEEN, ""),
                new Placement("R2", 5, 10, Placement.KnownFrom.SEEN, ""));
        Cove cove = new Cove("C1", "", 10, false, "", OptionalDouble.of(3), "", Optional.empty(), List.of(), placements);
        return new Survey(new Site("Test", ""), new Visit(Optional.empty(), "", Optional.empty(), minutesOn, ""),
                List.of(described("A"), described("B")),
                new Limits(2, OptionalDouble.empty(), "", StepRule.UV_CIRCLE, 0.05, Limits.ErrorPer.JOINT),
                List.of(reel("R1"), reel("R2")), List.of(cove), Optional.empty());
    }

    private SetUp described(String id) {
        return new SetUp(id, "", "", Optional.empty(), declaredUv, 0.0015, 0.0005, Reads.STRIP, 0, 100, leastLux, Set.of());
    }

    private static Reel reel(String id) {
        return new Reel(id, "Example Lamps", "EX-24", "", OptionalInt.of(2700), "a", "L1", "S" + id, "", "",
                OptionalDouble.of(5), OptionalDouble.of(3), Optional.empty());
    }

    Judgement judged(boolean correctDrift) {
        return new Judge().judge(survey(), readings, correctDrift);
    }

    /** Details of the note of a kind; empty where there is none. */
    Optional<List<String>> noted(Note.Kind kind, boolean correctDrift) {
        return judged(correctDrift).notes().stream().filter(note -> note.kind() == kind).map(Note::details).findFirst();
    }
}
