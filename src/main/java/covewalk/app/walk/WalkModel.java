package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Lengths;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import covewalk.verdict.StationPair;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The walk through one survey: where the next reading is taken, what is typed for it, what looks like a slip, and what is
 * said of it once it is handed over to be kept. For the screen's thread.
 */
final class WalkModel {

    /** Past the end of a cove by less than this is the tape's doing, m. */
    private static final double TAPE_M = 0.05;

    private final Desk desk;
    private final OpenSurvey survey;
    private final Texts texts;
    private final Entry entry;
    private final WalkSays says;
    private final Ending ending;
    private final ReadOnlyObjectWrapper<Aim> aim = new ReadOnlyObjectWrapper<>();
    private final InvalidationListener onLog = observable -> logChanged();
    private final InvalidationListener onKept = observable -> kept();
    private final InvalidationListener onJudged = observable -> judged();
    private final InvalidationListener onPlace = observable -> placeChanged();
    private Consumer<Entry.Field> focus = field -> { };
    private Runnable heard = () -> { };
    private Guide guide;
    private Walked walked;
    private Aim ahead;
    private String asked = "";
    private boolean looked;

    WalkModel(Desk desk, OpenSurvey survey, Texts texts) {
        this.desk = desk;
        this.survey = survey;
        this.texts = texts;
        this.entry = new Entry(MeterShows.ofLog(survey.readings()).or(() -> MeterShows.of(desk.memoryProperty().get().meterShows()))
                .orElse(MeterShows.USUAL));
        this.says = new WalkSays(texts, new LengthWords(texts, () -> desk.settings().feet()));
        this.ending = new Ending(this, desk, texts);
        survey.log().addListener(new WeakInvalidationListener(onLog));
        survey.waiting().addListener(new WeakInvalidationListener(onLog));
        survey.troubleProperty().addListener(new WeakInvalidationListener(onLog));
        survey.lastKeptProperty().addListener(new WeakInvalidationListener(onKept));
        survey.judgementProperty().addListener(new WeakInvalidationListener(onJudged));
        desk.placeProperty().addListener(new WeakInvalidationListener(onPlace));
        entry.first().addListener(observable -> typing());
        entry.second().addListener(observable -> typing());
        entry.lux().addListener(observable -> typing());
        says.noWhere(texts.get("planning"));
        plan();
    }

    Entry entry() {
        return entry;
    }

    WalkSays says() {
        return says;
    }

    ReadOnlyObjectProperty<Aim> aimProperty() {
        return aim.getReadOnlyProperty();
    }

    Aim aim() {
        return aim.get();
    }

    /** Null until the way is planned. */
    Guide guide() {
        return guide;
    }

    Ending ending() {
        return ending;
    }

    OpenSurvey survey() {
        return survey;
    }

    Optional<Cove> cove() {
        return guide == null ? Optional.empty() : guide.cove(aim());
    }

    Optional<CoveJudgement> judged(String cove) {
        return Optional.ofNullable(survey.judgementProperty().get()).map(Judgement::coves).orElse(List.of()).stream()
                .filter(judged -> judged.cove().id().equals(cove)).findFirst();
    }

    /** @param listener told which field is to be typed into next */
    void setOnFocus(Consumer<Entry.Field> listener) {
        focus = listener;
    }

    /** @param listener told each time a reading came on disk */
    void setOnKept(Runnable listener) {
        heard = listener;
    }

    // ---- the way ----

    /** Once there is a judgement of the survey as it is described now. */
    private void plan() {
        Judgement judged = survey.judgementProperty().get();
        if (judged != null && judged.survey() == survey.survey() && (guide == null || guide.survey() != judged.survey())) {
            Walked before = walked();
            desk.workers().sums().execute(() -> {
                Guide planned = Guide.of(judged, before);
                desk.workers().screen().execute(() -> planned(planned));
            });
        }
    }

    private void planned(Guide planned) {
        boolean begins = guide == null;
        guide = planned.after(guide);
        guide.walked(walked());
        if (begins || aim() == null || guide.cove(aim()).isEmpty()) {
            aimAt(guide.resume().orElse(null));
        } else {
            tell();
        }
    }

    Walked walked() {
        if (walked == null) {
            walked = Walked.of(survey.readings());
        }
        return walked;
    }

    private void aimAt(Aim next) {
        if (next != null) {
            desk.spotProperty().set(new Spot(next.cove(), next.atM()));
        }
        aim.set(next);
        asked = "";
        says.question().set(null);
        if (next == null) {
            ending.judged();
        }
        tell();
        focus.accept(Entry.Field.FIRST);
    }

    /** All that is said of where one is. */
    private void tell() {
        if (guide != null) {
            says.where(this);
            says.due(ReferenceDue.of(walked(), guide.setUp(), now()));
            ending.tell();
        }
    }

    private LocalDateTime now() {
        return LocalDateTime.now(desk.clock()).withNano(0);
    }

    /** How many readings the station has, the one being typed left out. */
    int readHere() {
        return aim() == null ? 0 : walked().station(aim().cove(), aim().atM(), guide.setUp()).size();
    }

    /** The round of the reading that is typed. */
    int round() {
        return aim().corrects().map(Reading::round).orElseGet(() -> aim().role() != Role.WALK ? 1 : cove().map(cove ->
                new Rounds(walked(), cove, guide.setUp()).of(aim().atM(), judged(cove.id()), looked)).orElse(1));
    }

    private void placeChanged() {
        Place now = desk.placeProperty().get();
        looked |= now == Place.FAULTS || now == Place.REPORT;
    }

    // ---- going about ----

    /** To the station before this one, to read it again. */
    void back() {
        leaveSideline();
        if (guide != null && aim() != null) {
            guide.before(aim()).ifPresent(this::aimAt);
        } else if (guide != null) {
            walked().last(reading -> reading.role() == Role.WALK).ifPresent(last -> aimAt(Aim.walk(last.cove(), last.positionM())));
        }
    }

    /** Once more at the station read last. */
    void repeatHere() {
        walked().last(reading -> reading.role() == Role.WALK).ifPresent(last -> {
            ahead = null;
            aimAt(Aim.walk(last.cove(), last.positionM()));
        });
    }

    /** On without a reading here. */
    void skip() {
        if (leaveSideline() || aim() == null) {
            return;
        }
        guide.skip(aim());
        aimAt(guide.next(aim()).orElse(null));
    }

    /** @return whether a reference, dark or corrected reading was being typed, which is given up */
    boolean leaveSideline() {
        if (aim() == null || aim().walks()) {
            return false;
        }
        entry.clear();
        aimAt(ahead);
        return true;
    }

    void reference() {
        aside(cove().or(() -> survey.survey().coves().stream().findFirst()).map(guide::referenceSpot));
    }

    void dark() {
        aside(Optional.ofNullable(aim()).map(at -> at.as(Role.DARK)));
    }

    void correct(Reading reading) {
        aside(Optional.of(Aim.correct(reading)));
        entry.show(reading);
        focus.accept(Entry.Field.FIRST);
    }

    private void aside(Optional<Aim> other) {
        other.ifPresent(there -> {
            if (aim() == null || aim().walks()) {
                ahead = aim();
            }
            entry.clear();
            aimAt(there);
        });
    }

    /**
     * To another position of this cove, between the stations or where one likes.
     *
     * @return what is wrong with it; empty where one is there now
     */
    String goTo(String position) {
        Optional<Typed> typed = Lengths.metres(position);
        Optional<Cove> cove = cove().or(() -> survey.survey().coves().stream().findFirst());
        if (typed.isEmpty() || cove.isEmpty()) {
            return texts.get("position.no-length", position.strip());
        }
        if (typed.get().value() > cove.get().lengthM() + TAPE_M) {
            return texts.get("position.outside", cove.get().id(), says.lengths().of(cove.get().lengthM()));
        }
        if (aim() != null && !aim().walks()) {
            entry.clear();
        }
        aimAt(Aim.walk(cove.get().id(), typed.get()));
        return "";
    }

    /** To the first open station of a cove; where all are read, to its first. */
    void begin(Cove cove) {
        leaveSideline();
        says.neighbour().set(Neighbour.NONE);
        aimAt(guide.first(cove).orElseGet(() -> Aim.walk(cove.id(), guide.route(cove).places().get(0).positionM())));
    }

    /** To what was looked at elsewhere. */
    void follow(Spot spot) {
        aimAt(Aim.walk(spot.cove(), spot.positionM()));
    }

    /** What was looked at elsewhere, where that is not where one reads. */
    Optional<Spot> lookedAtElsewhere() {
        Spot spot = desk.spotProperty().get();
        boolean here = spot == null || aim() != null && spot.cove().equals(aim().cove()) && spot.positionM() == aim().atM();
        return here || survey.survey().cove(spot.cove()).isEmpty() ? Optional.empty() : Optional.of(spot);
    }

    /** The other way round, another interval, another set-up: the way is found anew from here. */
    void change(Consumer<Guide> change) {
        change.accept(guide);
        aimAt(aim() == null ? guide.resume().orElse(null) : guide.first(cove().orElseThrow()).orElse(aim()));
    }

    void use(MeterShows shows) {
        entry.use(shows);
        desk.remember(shows.code());
        tell();
    }

    // ---- typing and keeping ----

    private void typing() {
        if (!asked.isEmpty() && !entry.asTyped().equals(asked)) {
            asked = "";
            says.question().set(null);
        }
    }

    /** What the big key does: the next field, a question, or the reading is handed over. */
    void enter() {
        if (aim() == null) {
            ending.offers().stream().findFirst().ifPresent(offer -> offer.take().run());
            return;
        }
        Optional<Entry.Field> missing = entry.missing();
        if (missing.isPresent()) {
            says.question().set(new Question(texts.get("typed.missing",
                    missing.get() == Entry.Field.FIRST ? entry.meter().pair().first() : entry.meter().pair().second()), true));
            asked = entry.asTyped();
            focus.accept(missing.get());
            return;
        }
        List<Question> slips = new Slips(survey.survey(), texts).of(entry, aim());
        boolean refused = slips.stream().anyMatch(Question::refused);
        Optional<Question> jump = refused ? Optional.empty() : cove().flatMap(cove ->
                Jump.of(survey.survey(), cove, walked(), guide.setUp(), aim(), entry.colour().orElseThrow(), texts));
        Optional<Question> first = slips.stream().filter(Question::refused).findFirst().or(() -> slips.stream().findFirst()).or(() -> jump);
        if (refused || first.isPresent() && !entry.asTyped().equals(asked)) {
            says.question().set(first.orElseThrow());
            asked = entry.asTyped();
            return;
        }
        keep(jump.isPresent());
    }

    private void keep(boolean jumped) {
        Aim at = aim();
        boolean fromWalk = at.role() == Role.WALK;
        Reading reading = new Reading(survey.nextId(), at.cove(), at.positionM(), at.role(),
                at.corrects().map(Reading::setUp).orElse(guide.setUp()), round(), entry.colour(), entry.luxTyped(),
                at.corrects().map(Reading::takenAt).orElse(now().toString()), at.corrects().map(Reading::id).orElse(""),
                entry.note().get().strip(), 0);
        entry.handOver(reading.id());
        sayNeighbour(reading);
        says.numbers(reading, readHere() + (at.corrects().isPresent() ? 0 : 1));
        looked &= !fromWalk;
        survey.keep(reading);
        guide.walked(walked());
        if (!at.walks()) {
            aimAt(ahead);
        } else if (jumped && readHere() < 2 || guide.lacksReadings(at)) {
            aimAt(at);
            says.stay(jumped && readHere() < 2);
        } else {
            aimAt(guide.next(at).orElse(null));
        }
    }

    /** Before the reading is judged with all others, so that this comes first. */
    private void sayNeighbour(Reading reading) {
        boolean reference = reading.role() == Role.REFERENCE;
        List<Reading> last = reference ? firstVisit(reading)
                : walked().lastStation(reading.cove(), reading.positionM().value(), reading.setUp());
        List<Reading> here = new ArrayList<>(reference ? List.of()
                : walked().station(reading.cove(), reading.positionM().value(), reading.setUp()));
        here.removeIf(other -> other.id().equals(reading.replaces()));
        here.add(reading);
        if (reading.role() == Role.DARK) {
            says.neighbour().set(Neighbour.plain(texts.get("neighbour.dark")));
            return;
        }
        desk.workers().sums().execute(() -> {
            Optional<StationPair> pair = StationPair.of(survey.survey(), last, here);
            desk.workers().screen().execute(() -> says.pair(pair, reading, survey.survey().limits().neighbourSteps()));
        });
    }

    private List<Reading> firstVisit(Reading reading) {
        return walked().readings().stream().filter(other -> other.role() == Role.REFERENCE && other.setUp().equals(reading.setUp())
                && other.cove().equals(reading.cove()) && other.positionM().value() == reading.positionM().value()).limit(1).toList();
    }

    private void logChanged() {
        walked = null;
        if (guide != null) {
            guide.walked(walked());
        }
        says.held(survey.waiting().size(), !survey.troubleProperty().get().isEmpty());
        tell();
    }

    private void kept() {
        Reading last = survey.lastKeptProperty().get();
        if (last != null) {
            entry.kept(last.id());
            says.kept(last);
            heard.run();
        }
    }

    private void judged() {
        plan();
        tell();
        if (aim() == null && guide != null) {
            ending.judged();
        }
    }

    // ---- taking back ----

    /** The reading that {@link #takeBack()} would take back. */
    Optional<Reading> latest() {
        return walked().last();
    }

    void takeBack() {
        latest().ifPresent(this::takeBack);
    }

    /** By a row that withdraws it: nothing in the log is overwritten. */
    void takeBack(Reading reading) {
        survey.keep(new Reading(survey.nextId(), reading.cove(), reading.positionM(), reading.role(), reading.setUp(), reading.round(),
                Optional.empty(), Optional.empty(), now().toString(), reading.id(), texts.get("withdrawn"), 0));
        guide.walked(walked());
        says.takenBack(reading);
        entry.clear();
        ahead = aim() == null || aim().walks() ? aim() : ahead;
        aimAt(Aim.walk(reading.cove(), reading.positionM()).as(reading.role()));
    }

    /** Whether its numbers are those that the meter shows now. */
    boolean canCorrect(Reading reading) {
        return reading.colour().flatMap(entry.meter().pair()::of).isPresent();
    }

    /** Readings of this cove that stand, oldest first. */
    List<Reading> correctable() {
        return aim() == null ? walked().readings() : walked().readings().stream().filter(reading -> reading.cove().equals(aim().cove())).toList();
    }
}
