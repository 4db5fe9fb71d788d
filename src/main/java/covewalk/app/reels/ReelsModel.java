package covewalk.app.reels;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.desk.Theme;
import covewalk.app.forms.Description;
import covewalk.app.forms.Form;
import covewalk.app.forms.Items;
import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.ReelKind;
import covewalk.app.forms.ReelList;
import covewalk.app.forms.Writing;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.plot.StripFrame;
import covewalk.survey.Cove;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import covewalk.words.LengthUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ChangeListener;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** All reels of the open survey, those that are looked for, and what is known of the one that is chosen. */
final class ReelsModel {

    /** Beside the list on a small screen its text is then as large as on the other strips. */
    private static final double STRIP_MM = 120;

    private final Desk desk;
    private final Texts texts;
    private final Description description;
    private final Items<Reel> reels;
    private final Form<Reel> form;
    private final StringProperty search = new SimpleStringProperty("");
    private final ObservableList<Reel> found = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<ReelFacts> facts = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ChangeListener<Judgement> judged = (property, before, now) -> look();

    ReelsModel(Desk desk) {
        this.desk = desk;
        texts = desk.texts(ReelsModel.class);
        description = new Description(desk);
        reels = ReelList.of(description);
        form = new Form<>("reel", new ReelKind(() -> LocalDate.now(desk.clock()).getYear()), description, this::writing, texts);
        search.addListener((property, before, now) -> find());
        description.surveyProperty().addListener((property, before, now) -> find());
        reels.chosenProperty().addListener((property, before, now) -> {
            form.on(reels.part(now.intValue()));
            look();
        });
        desk.memoryProperty().addListener((property, before, now) -> {
            if (!before.settings().equals(now.settings())) {
                look();
            }
        });
        desk.surveyProperty().addListener((property, before, now) -> turn(before, now));
        turn(null, desk.survey());
    }

    private void turn(OpenSurvey before, OpenSurvey now) {
        if (before != null) {
            before.judgementProperty().removeListener(judged);
        }
        if (now != null) {
            now.judgementProperty().addListener(judged);
        }
        search.set("");
        reels.choose(-1);
        find();
    }

    private void find() {
        Survey survey = description.survey();
        if (survey == null) {
            found.clear();
            return;
        }
        List<Reel> now = matching(survey, search.get().strip());
        if (!found.equals(now)) {
            found.setAll(now);
        }
        says.set(search.get().isBlank() ? texts.count("all", survey.reels().size()) : texts.count("found", now.size()));
        look();
    }

    private List<Reel> matching(Survey survey, String typed) {
        Optional<Reel> exact = new ReelFinder(survey, LocalDate.now(desk.clock()).getYear()).known(typed);
        String part = typed.toLowerCase(Locale.ROOT);
        return exact.map(List::of).orElseGet(() -> survey.reels().stream().filter(reel -> part.isEmpty() || ReelFinder.has(reel, part)).toList());
    }

    /** Looks at what was found first: a scanner ends with Enter. */
    void enter() {
        if (!found.isEmpty()) {
            choose(found.get(0));
        }
    }

    void choose(Reel reel) {
        reels.choose(reels.items().indexOf(reel));
    }

    private void look() {
        Survey survey = description.survey();
        facts.set(survey == null ? null : reels.chosen().map(reel -> ReelFacts.of(reel.id(), survey, judgement())).orElse(null));
    }

    private Optional<Judgement> judgement() {
        return Optional.ofNullable(desk.survey()).map(open -> open.judgementProperty().get());
    }

    /** The first cove that the reel lies in, judged. */
    Optional<CoveJudgement> judged(ReelFacts of) {
        return of.lies().stream().findFirst().flatMap(first -> judgement().flatMap(all -> all.coves().stream()
                .filter(cove -> cove.cove().id().equals(first.cove().id())).findFirst()));
    }

    LengthUnit lengths() {
        return desk.settings().lengths();
    }

    /** How its strip is drawn: as on all screens, for the light there is. */
    StripFrame frame(Cove cove) {
        return StripFrame.screen(cove, STRIP_MM, desk.settings().theme() == Theme.DARK);
    }

    /** Shows a place on the strip, where faults are looked at. */
    void show(String cove, double positionM) {
        desk.spotProperty().set(new Spot(cove, positionM));
        desk.go(Place.FAULTS);
    }

    /** A reel that was looked at elsewhere: whatever lies at the spot on the desk. */
    void chooseAtSpot() {
        Spot spot = desk.spotProperty().get();
        Survey survey = description.survey();
        if (reels.chosen().isEmpty() && survey != null && spot != null) {
            survey.cove(spot.cove()).flatMap(cove -> cove.placementAt(spot.positionM()))
                    .flatMap(placement -> survey.reel(placement.reel())).ifPresent(this::choose);
        }
    }

    StringProperty searchProperty() {
        return search;
    }

    /** The reels that have in them what is looked for. */
    ObservableList<Reel> found() {
        return found;
    }

    /** How many those are. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** What is known of the chosen one; null where none is. */
    ReadOnlyObjectProperty<ReelFacts> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    Optional<Reel> chosen() {
        return reels.chosen();
    }

    Form<Reel> form() {
        return form;
    }

    Description description() {
        return description;
    }

    Writing writing() {
        return new Writing(texts, desk.settings());
    }

    int textPercent() {
        return desk.settings().textPercent();
    }

    Texts texts() {
        return texts;
    }
}
