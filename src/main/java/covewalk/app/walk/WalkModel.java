package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.LengthWords;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Lengths;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;

/**
 * The walk through one survey: what is typed for the next reading, what looks like a slip, and what is said of it once it is
 * handed over to be kept. For the screen's thread.
 */
final class WalkModel {

    /** Past the end of a cove by less than this is the tape's doing, m. */
    private static final double TAPE_M = 0.05;

    private final Desk desk;
    private final OpenSurvey survey;
    private final Texts texts;
    private final Entry entry;
    private final WalkSays says;
    private final Way way;
    private final Ending ending;
    private final InvalidationListener onLog = observable -> logChanged();
    private final InvalidationListener onKept = observable -> kept();
    private final InvalidationListener onJudged = observable -> judged();
    private final InvalidationListener onPlace = observable -> placeChanged();
    private Consumer<Entry.Field> focus = field -> { };
    private Runnable heard = () -> { };
    private String asked = "";
    private boolean looked;

    WalkModel(Desk desk, OpenSurvey survey, Texts texts) {
        this.desk = desk;
        this.survey = survey;
        this.texts = texts;
        entry = new Entry(MeterShows.ofLog(survey.readings()).or(() -> MeterShows.of(desk.memoryProperty().get().meterShows()))
                .orElse(MeterShows.USUAL));
        says = new WalkSays(texts, new LengthWords(texts.numbers(), () -> desk.settings().feet()));
        way = new Way(desk, survey);
        ending = new Ending(this, desk, texts);
        way.setOnArrived(this::arrived, entry::clear);
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
        way.plan();
    }

    Entry entry() {
        return entry;
    }

    WalkSays says() {
        return says;
    }

    Way way() {
        return way;
    }

    Ending ending() {
        return ending;
    }

    OpenSurvey survey() {
        return survey;
    }

    /** The verdicts of a cove as they are now; empty before the first. */
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

    private void arrived() {
        ask(null);
        if (way.aim() == null) {
            ending.judged();
        }
        tell();
        focus.accept(Entry.Field.FIRST);
    }

    /** All that is said of where one is. */
    private void tell() {
        if (way.isPlanned()) {
            says.where(this);
            says.due(ReferenceDue.of(way.walked(), way.guide().setUp(), now()));
            ending.tell();
        }
    }

    private LocalDateTime now() {
        return LocalDateTime.now(desk.clock()).withNano(0);
    }

    /** The round of the reading that is typed. */
    int round() {
        Aim at = way.aim();
        return at.corrects().map(Reading::round).orElseGet(() -> at.role() != Role.WALK ? 1 : way.cove().map(cove ->
                new Rounds(way.walked(), cove, way.guide().setUp()).of(at.atM(), judged(cove.id()), looked)).orElse(1));
    }

    private void placeChanged() {
        Place now = desk.placeProperty().get();
        looked |= now == Place.FAULTS || now == Place.REPORT;
    }

    /**
     * Goes to another position of this cove, as typed.
     *
     * @return what is wrong with it; empty where one is there now
     */
    String goTo(String position) {
        Optional<Typed> typed = Lengths.metres(position);
        Optional<Cove> cove = way.cove().or(() -> survey.survey().coves().stream().findFirst());
        if (typed.isEmpty() || cove.isEmpty()) {
            return texts.get("position.no-length", position.strip());
        }
        if (typed.get().value() > cove.get().lengthM() + TAPE_M) {
            return texts.get("position.outside", cove.get().id(), says.lengths().brief(cove.get().lengthM()));
        }
        way.goTo(cove.get(), typed.get());
        return "";
    }

    void begin(Cove cove) {
        says.neighbour().set(Neighbour.NONE);
        way.begin(cove);
    }

    void use(MeterShows shows) {
        entry.use(shows);
        desk.remember(shows.code());
        tell();
    }

    private void typing() {
        if (!asked.isEmpty() && !entry.asTyped().equals(asked)) {
            ask(null);
        }
    }

    private void ask(Question question) {
        asked = question == null ? "" : entry.asTyped();
        says.question().set(question);
    }

    /** What the big key does: the next field, a question, or the reading is handed over. */
    void enter() {
        if (way.aim() == null) {
            ending.offers().stream().findFirst().ifPresent(offer -> offer.take().run());
        } else if (entry.missing().isPresent()) {
            Entry.Field missing = entry.missing().get();
            ask(new Question(texts.get("typed.missing", entry.meter().name(missing)), true));
            focus.accept(missing);
        } else {
            examine();
        }
    }

    private void examine() {
        List<Question> slips = new Slips(survey.survey(), texts).of(entry, way.aim());
        Optional<Question> refused = slips.stream().filter(Question::refused).findFirst();
        Optional<Question> jump = refused.isPresent() ? Optional.empty() : way.cove().flatMap(cove -> Jump.of(survey.survey(), cove,
                way.walked(), way.guide().setUp(), way.aim(), entry.colour().orElseThrow(), texts));
        Optional<Question> question = refused.or(() -> slips.stream().findFirst()).or(() -> jump);
        if (refused.isPresent() || question.isPresent() && !entry.asTyped().equals(asked)) {
            ask(question.get());
        } else {
            keep(jump.isPresent());
        }
    }

    private void keep(boolean jumped) {
        Aim at = way.aim();
        Optional<Reading> corrected = at.corrects();
        Reading reading = new Reading(survey.nextId(), at.cove(), at.positionM(), at.role(),
                corrected.map(Reading::setUp).orElse(way.guide().setUp()), round(), entry.colour(), entry.luxTyped(),
                corrected.map(Reading::takenAt).orElse(now().toString()), corrected.map(Reading::id).orElse(""),
                entry.note().get().strip(), 0);
        entry.handOver(reading.id());
        new Told(desk.workers(), says, texts).tell(survey.survey(), way.walked(), reading); // before all is judged: this comes first
        says.numbers(reading, way.readHere() + (corrected.isPresent() ? 0 : 1));
        looked &= at.role() != Role.WALK;
        survey.keep(reading);
        boolean again = jumped && way.readHere() < 2;
        way.go(again);
        if (again) {
            says.question().set(new Question(texts.get("jump.repeat"), false));
        }
    }

    private void logChanged() {
        way.walkedOn();
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
        way.plan();
        tell();
        if (way.aim() == null && way.isPlanned()) {
            ending.judged();
        }
    }

    /** The reading that {@link #takeBack()} would take back. */
    Optional<Reading> latest() {
        return way.walked().last();
    }

    void takeBack() {
        latest().ifPresent(this::takeBack);
    }

    /** By a row that withdraws it: nothing in the log is overwritten. */
    void takeBack(Reading reading) {
        survey.keep(new Reading(survey.nextId(), reading.cove(), reading.positionM(), reading.role(), reading.setUp(), reading.round(),
                Optional.empty(), Optional.empty(), now().toString(), reading.id(), texts.get("withdrawn"), 0));
        says.takenBack(reading);
        entry.clear();
        way.returnTo(reading);
    }

    /** Types an earlier reading anew, beginning with the numbers it has. */
    void correct(Reading reading) {
        way.correct(reading);
        entry.show(reading);
        focus.accept(Entry.Field.FIRST);
    }

    /** Whether its numbers are those that the meter shows now. */
    boolean canCorrect(Reading reading) {
        return reading.colour().flatMap(entry.meter().pair()::of).isPresent();
    }

    /** Readings of this cove that stand, oldest first. */
    List<Reading> correctable() {
        return way.walked().readings().stream().filter(reading -> way.aim() == null || reading.cove().equals(way.aim().cove())).toList();
    }
}
