package covewalk.app.walk;

import covewalk.survey.Cove;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
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
import java.util.stream.Collectors;

/**
 * Knows the way: which station comes next in a cove, and which cove after it. The stations are those planned for the cove
 * as if nothing had been read, so that they stay where they are while one walks.
 */
final class Guide {

    /**
     * What is planned for one set-up.
     *
     * @param fresh by cove, as if nothing had been read
     * @param further with what has been read, in the survey's order
     */
    private record Plans(Map<String, CovePlan> fresh, List<CovePlan> further) {

        static Plans of(Judgement unread, Judgement judged, SetUp setUp) {
            return new Plans(WalkPlan.of(unread, setUp).coves().stream().collect(Collectors.toMap(plan -> plan.cove().id(), plan -> plan)),
                    WalkPlan.of(judged, setUp).coves());
        }
    }

    private final Survey survey;
    private final Map<String, Plans> bySetUp = new HashMap<>();
    private final Map<String, List<Station>> stations = new HashMap<>();
    private final Map<String, Route> routes = new HashMap<>();
    private Walked walked = Walked.of(List.of());
    private String setUp;
    private double intervalM = Route.USUAL_INTERVAL_M;
    private boolean backwards;

    private Guide(Judgement judged) {
        this.survey = judged.survey();
        this.setUp = survey.firstSetUp().id();
        Judgement unread = new Judge().judge(survey, List.of());
        survey.setUps().forEach(known -> bySetUp.put(known.id(), Plans.of(unread, judged, known)));
        judged.coves().forEach(cove -> stations.put(cove.cove().id(), cove.stations()));
    }

    /**
     * Plans the whole walk, for each set-up: some work, for the thread that makes sums. A cove that was read elsewhere than
     * planned, by an import or by eye, is gone on with as its verdicts ask for.
     */
    static Guide of(Judgement judged, Walked walked) {
        Guide guide = new Guide(judged);
        guide.walked = walked;
        guide.use(guide.setUp);
        return guide;
    }

    private Optional<CovePlan> fresh(String cove) {
        return Optional.ofNullable(bySetUp.get(setUp).fresh().get(cove));
    }

    /** Whether half of what was read with this set-up lies where it was to be read; nothing read is as planned. */
    private boolean isOnPlan(Cove cove) {
        Route route = route(cove);
        List<Station> read = stations.get(cove.id()).stream().filter(station -> station.setUp().equals(setUp)).toList();
        long there = read.stream().filter(station -> route.places().stream()
                .anyMatch(place -> Math.abs(place.positionM() - station.positionM()) <= Walked.SAME_PLACE_M)).count();
        return 2 * there >= read.size() || cove.placements().isEmpty();
    }

    /** As the one before walked: the same way round, with the same interval and set-up, where that is still there. */
    Guide after(Guide before) {
        if (before != null) {
            intervalM = before.intervalM;
            turn(before.backwards);
            change(before.setUp);
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

    /** Another set-up asks for other stations; what was skipped is open again. */
    void use(String otherSetUp) {
        setUp = otherSetUp;
        routes.clear();
        bySetUp.get(setUp).further().stream().filter(plan -> !isOnPlan(plan.cove())).forEach(this::readOn);
    }

    /** To a set-up that may be the same, or gone from the survey. */
    private void change(String other) {
        if (!other.equals(setUp) && survey.setUp(other).isPresent()) {
            use(other);
        }
    }

    double intervalM() {
        return intervalM;
    }

    /** @param metres between the stations of coves for which nothing is planned */
    void every(double metres) {
        intervalM = metres;
        routes.keySet().removeIf(cove -> fresh(cove).map(plan -> plan.stops().isEmpty()).orElse(true));
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
        return routes.computeIfAbsent(cove.id(), id -> Route.of(cove, fresh(id), intervalM, backwards));
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

    /** As the last reading was taken. */
    void useTheLast() {
        walked.last().ifPresent(last -> change(last.setUp()));
    }

    /** Where to go on: where the last reading was taken, or behind it. */
    Optional<Aim> resume() {
        Optional<Reading> last = walked.last();
        if (last.isEmpty()) {
            return survey.coves().isEmpty() ? Optional.empty() : first(survey.coves().get(0)).or(() -> nextOpenCove("").flatMap(this::first));
        }
        Optional<Reading> station = walked.last(reading -> reading.role() == Role.WALK);
        Aim at = Aim.walk(station.orElse(last.get()).cove(), station.orElse(last.get()).positionM());
        return station.isEmpty() ? cove(at).flatMap(this::first) : lacksReadings(at) ? Optional.of(at) : next(at);
    }

    /** Where the reference spot is: where it was read last, else where the plan has it, else half way along the first reel. */
    Aim referenceSpot(Cove cove) {
        return walked.last(reading -> reading.role() == Role.REFERENCE && reading.setUp().equals(setUp))
                .map(reading -> Aim.walk(reading.cove(), reading.positionM()))
                .or(() -> fresh(cove.id()).flatMap(plan -> plan.stops().stream()
                        .filter(stop -> stop.kind() == Stop.Kind.REFERENCE).findFirst().map(stop -> Aim.walk(cove.id(), stop.positionM()))))
                .orElseGet(() -> Aim.walk(cove.id(), cove.placements().isEmpty() ? cove.lengthM() / 2
                        : (cove.placements().get(0).fromM() + cove.placements().get(0).toM()) / 2))
                .as(Role.REFERENCE);
    }
}
