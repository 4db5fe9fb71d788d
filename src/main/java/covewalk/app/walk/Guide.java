package covewalk.app.walk;

import covewalk.survey.Cove;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Survey;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.Stop;
import covewalk.verdict.plan.WalkPlan;
import covewalk.verdict.stretch.Station;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Knows the way: which station comes next in a cove, and which cove after it. The stations are those planned for the cove
 * as if nothing had been read, so that they stay where they are while one walks.
 */
final class Guide {

    private final Survey survey;
    private final Map<String, CovePlan> plans = new HashMap<>();
    private final Map<String, Route> routes = new HashMap<>();
    private Walked walked = Walked.of(List.of());
    private String setUp;
    private double intervalM = Route.USUAL_INTERVAL_M;
    private boolean backwards;

    private Guide(Survey survey, WalkPlan plan) {
        this.survey = survey;
        this.setUp = survey.firstSetUp().id();
        plan.coves().forEach(cove -> plans.put(cove.cove().id(), cove));
    }

    /**
     * Plans the whole walk: some work, for the thread that makes sums. A cove that was read elsewhere than planned, by an
     * import or by eye, is gone on with as its verdicts ask for.
     */
    static Guide of(Judgement judged, Walked walked) {
        Guide guide = new Guide(judged.survey(), WalkPlan.of(new Judge().judge(judged.survey(), List.of())));
        guide.walked = walked;
        List<CovePlan> more = WalkPlan.of(judged).coves();
        for (int i = 0; i < more.size(); i++) {
            List<Station> stations = judged.coves().get(i).stations();
            if (!guide.isOnPlan(more.get(i).cove(), stations)) {
                guide.readOn(more.get(i));
            }
        }
        return guide;
    }

    /** Whether half of what was read lies where it was to be read; nothing read is as planned. */
    private boolean isOnPlan(Cove cove, List<Station> stations) {
        Route route = route(cove);
        long there = stations.stream().filter(station -> route.places().stream()
                .anyMatch(place -> Math.abs(place.positionM() - station.positionM()) <= Walked.SAME_PLACE_M)).count();
        return 2 * there >= stations.size() || cove.placements().isEmpty();
    }

    /** As the one before walked: the same way round, with the same interval and set-up, where that is still there. */
    Guide after(Guide before) {
        if (before != null) {
            intervalM = before.intervalM;
            turn(before.backwards);
            setUp = survey.setUp(before.setUp).isPresent() ? before.setUp : setUp;
        }
        return this;
    }

    Survey survey() {
        return survey;
    }

    void walked(Walked now) {
        walked = now;
    }

    String setUp() {
        return setUp;
    }

    void use(String otherSetUp) {
        setUp = otherSetUp;
    }

    double intervalM() {
        return intervalM;
    }

    /** @param metres between the stations of coves for which nothing is planned */
    void every(double metres) {
        intervalM = metres;
        routes.keySet().removeIf(cove -> !plans.containsKey(cove) || plans.get(cove).stops().isEmpty());
    }

    boolean backwards() {
        return backwards;
    }

    void turn(boolean fromTheFarEnd) {
        backwards = fromTheFarEnd;
        routes.replaceAll((cove, route) -> route.turned(fromTheFarEnd));
    }

    Optional<Cove> cove(Aim aim) {
        return Optional.ofNullable(aim).flatMap(at -> survey.cove(at.cove()));
    }

    Route route(Cove cove) {
        return routes.computeIfAbsent(cove.id(), id -> Route.of(cove, Optional.ofNullable(plans.get(id)), intervalM, backwards));
    }

    /** Goes on by a plan that knows what was read, to settle what is not. */
    void readOn(CovePlan more) {
        routes.put(more.cove().id(), Route.more(more, readIn(more.cove()), backwards));
    }

    private List<Double> readIn(Cove cove) {
        return walked.walk(cove.id(), setUp).map(reading -> reading.positionM().value()).toList();
    }

    Optional<Aim> first(Cove cove) {
        return route(cove).firstOpen(readIn(cove)).map(place -> Aim.walk(cove.id(), place.positionM()));
    }

    /** The next station of the same cove; empty where all of them are read. */
    Optional<Aim> next(Aim aim) {
        return cove(aim).flatMap(cove -> route(cove).nextOpen(aim.atM(), readIn(cove)).map(place -> Aim.walk(cove.id(), place.positionM())));
    }

    Optional<Aim> before(Aim aim) {
        return cove(aim).flatMap(cove -> route(cove).before(aim.atM()).map(place -> Aim.walk(cove.id(), place.positionM())));
    }

    /** How many readings a station should have; 1 where nothing is planned for it. */
    int wanted(Aim aim) {
        return cove(aim).flatMap(cove -> route(cove).at(aim.atM())).map(Route.Place::readings).orElse(1);
    }

    boolean lacksReadings(Aim aim) {
        return cove(aim).flatMap(cove -> route(cove).at(aim.atM()).filter(place -> route(cove).left(place, readIn(cove)) > 0)).isPresent();
    }

    void skip(Aim aim) {
        cove(aim).ifPresent(cove -> route(cove).skip(aim.atM()));
    }

    int skipped(Cove cove) {
        return route(cove).skipped(readIn(cove));
    }

    /** The next cove with open stations, in the order of the survey, round its end. */
    Optional<Cove> nextOpenCove(String after) {
        List<Cove> coves = survey.coves();
        int at = 0;
        for (int i = 0; i < coves.size(); i++) {
            at = coves.get(i).id().equals(after) ? i : at;
        }
        for (int i = 1; i <= coves.size(); i++) {
            Cove cove = coves.get((at + i) % coves.size());
            if (!cove.id().equals(after) && first(cove).isPresent()) {
                return Optional.of(cove);
            }
        }
        return Optional.empty();
    }

    /** Where to go on: where the last reading was taken, or behind it. */
    Optional<Aim> resume() {
        Optional<Reading> last = walked.last();
        if (last.isEmpty()) {
            return survey.coves().isEmpty() ? Optional.empty() : first(survey.coves().get(0)).or(() -> nextOpenCove("").flatMap(this::first));
        }
        setUp = survey.setUp(last.get().setUp()).isPresent() ? last.get().setUp() : setUp;
        Optional<Reading> station = walked.last(reading -> reading.role() == Role.WALK);
        Aim at = Aim.walk(station.orElse(last.get()).cove(), station.orElse(last.get()).positionM());
        return station.isEmpty() ? cove(at).flatMap(this::first) : lacksReadings(at) ? Optional.of(at) : next(at);
    }

    /** Where the reference spot is: where it was read last, else where the plan has it, else half way along the first reel. */
    Aim referenceSpot(Cove cove) {
        return walked.last(reading -> reading.role() == Role.REFERENCE && reading.setUp().equals(setUp))
                .map(reading -> Aim.walk(reading.cove(), reading.positionM()))
                .or(() -> Optional.ofNullable(plans.get(cove.id())).flatMap(plan -> plan.stops().stream()
                        .filter(stop -> stop.kind() == Stop.Kind.REFERENCE).findFirst().map(stop -> Aim.walk(cove.id(), stop.positionM()))))
                .orElseGet(() -> Aim.walk(cove.id(), cove.placements().isEmpty() ? cove.lengthM() / 2
                        : (cove.placements().get(0).fromM() + cove.placements().get(0).toM()) / 2))
                .as(Role.REFERENCE);
    }
}
