package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Spot;
import covewalk.app.open.OpenSurvey;
import covewalk.survey.Cove;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.verdict.Judgement;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Where the next reading is taken, and how one gets there: from station to station, aside, and back. */
final class Way {

    private final Desk desk;
    private final OpenSurvey survey;
    private final ReadOnlyObjectWrapper<Aim> aim = new ReadOnlyObjectWrapper<>();
    private Runnable arrived = () -> { };
    private Runnable gaveUp = () -> { };
    private Guide guide;
    private Walked walked;
    private Aim ahead;
    private Spot shown;

    Way(Desk desk, OpenSurvey survey) {
        this.desk = desk;
        this.survey = survey;
    }

    /**
     * @param listener told each time one stands somewhere, the same place perhaps
     * @param whenGivenUp told when what was typed for another kind of reading is not wanted any more
     */
    void setOnArrived(Runnable listener, Runnable whenGivenUp) {
        arrived = listener;
        gaveUp = whenGivenUp;
    }

    ReadOnlyObjectProperty<Aim> aimProperty() {
        return aim.getReadOnlyProperty();
    }

    /** Null where there is no next station. */
    Aim aim() {
        return aim.get();
    }

    /** Null until the way is planned. */
    Guide guide() {
        return guide;
    }

    boolean isPlanned() {
        return guide != null;
    }

    Optional<Cove> cove() {
        return guide == null ? Optional.empty() : guide.cove(aim());
    }

    Walked walked() {
        if (walked == null) {
            walked = Walked.of(survey.readings());
        }
        return walked;
    }

    /** There are other readings than before. */
    void walkedOn() {
        walked = null;
        if (guide != null) {
            guide.walked(walked());
        }
    }

    /** Plans once there is a judgement of the survey as it is described now. */
    void plan() {
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
        if (begins) {
            guide.useTheLast();
        }
        boolean lost = begins || aim() == null || guide.cove(aim()).isEmpty();
        aimAt(lost ? guide.resume().orElse(null) : aim());
    }

    private void aimAt(Aim next) {
        if (next != null) {
            shown = new Spot(next.cove(), next.atM());
            desk.spotProperty().set(shown);
        }
        aim.set(next);
        arrived.run();
    }

    /** How many readings the station has, the one being typed left out. */
    int readHere() {
        return aim() == null ? 0 : walked().station(aim().cove(), aim().atM(), guide.setUp()).size();
    }

    /** To the station before this one, to read it again. */
    void back() {
        leaveSideline();
        if (aim() == null) {
            repeatHere();
        } else {
            guide.before(aim()).ifPresent(this::aimAt);
        }
    }

    /** Once more at the station read last. */
    void repeatHere() {
        if (guide != null) {
            leaveSideline();
            walked().last(reading -> reading.role() == Role.WALK).ifPresent(last -> aimAt(Aim.walk(last.cove(), last.positionM())));
        }
    }

    /** On without a reading here. */
    void skip() {
        if (aim() != null && !leaveSideline()) {
            guide.skip(aim());
            aimAt(guide.next(aim()).orElse(null));
        }
    }

    /** @return whether a reference, dark or corrected reading was being typed, which is given up */
    boolean leaveSideline() {
        if (aim() == null || aim().walks()) {
            return false;
        }
        gaveUp.run();
        aimAt(ahead);
        return true;
    }

    void reference() {
        if (guide != null) {
            aside(cove().or(() -> survey.survey().coves().stream().findFirst()).map(guide::referenceSpot));
        }
    }

    void dark() {
        aside(Optional.ofNullable(aim()).map(at -> at.as(Role.DARK)));
    }

    void correct(Reading reading) {
        aside(Optional.of(Aim.correct(reading)));
    }

    /** To where a reading was taken that is to be taken again. */
    void returnTo(Reading reading) {
        Aim there = Aim.walk(reading.cove(), reading.positionM()).as(reading.role());
        if (there.walks()) {
            leaveSideline();
            aimAt(there);
        } else {
            aside(Optional.of(there));
        }
    }

    private void aside(Optional<Aim> other) {
        other.ifPresent(there -> {
            ahead = aim() == null || aim().walks() ? aim() : ahead;
            gaveUp.run();
            aimAt(there);
        });
    }

    /** To another position of this cove, between the stations or where one likes. */
    void goTo(Cove cove, Typed positionM) {
        leaveSideline();
        aimAt(Aim.walk(cove.id(), positionM));
    }

    /** To the first open station of a cove; where all are read, to its first. */
    void begin(Cove cove) {
        leaveSideline();
        aimAt(guide.first(cove).or(() -> guide.route(cove).places().stream().findFirst().map(place -> Aim.walk(cove.id(), place.positionM())))
                .orElseGet(() -> Aim.walk(cove.id(), cove.lengthM() / 2)));
    }

    /** To what was looked at elsewhere. */
    void follow(Spot spot) {
        leaveSideline();
        aimAt(Aim.walk(spot.cove(), spot.positionM()));
    }

    /** What was looked at elsewhere since one was here. */
    Optional<Spot> lookedAtElsewhere() {
        Spot spot = desk.spotProperty().get();
        return spot == null || spot.equals(shown) ? Optional.empty()
                : Optional.of(spot).filter(there -> guide != null && survey.survey().cove(there.cove()).isPresent());
    }

    /** The other way round, another interval, another set-up: the way is found anew. */
    void change(Consumer<Guide> change) {
        leaveSideline();
        change.accept(guide);
        aimAt(here().map(cove -> guide.first(cove).orElse(aim())).orElseGet(() -> guide.resume().orElse(null)));
    }

    /** Where one is, or has just come to the end. */
    private Optional<Cove> here() {
        return cove().or(() -> walked().last(reading -> reading.role() == Role.WALK)
                .flatMap(last -> survey.survey().cove(last.cove())));
    }

    /** On, after a reading was handed over. */
    void go(boolean stay) {
        Aim at = aim();
        if (!at.walks()) {
            aimAt(ahead);
        } else {
            aimAt(stay || guide.lacksReadings(at) ? at : guide.next(at).orElse(null));
        }
    }
}
