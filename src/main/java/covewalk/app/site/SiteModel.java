package covewalk.app.site;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Settings;
import covewalk.app.forms.Description;
import covewalk.app.forms.Form;
import covewalk.app.forms.Items;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Part;
import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.ReelKind;
import covewalk.app.forms.ReelList;
import covewalk.app.forms.Refusals;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Purpose;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The description of the open survey, section by section. */
final class SiteModel {

    private final Texts texts;
    private final Description description;
    private final Supplier<Writing> writing;
    private final SiteForms forms;
    private final Items<SetUp> setUps;
    private final Items<Reel> reels;
    private final Items<Cove> coves;
    private final CoveModel cove;
    private final LayReel lay;
    private final StripTouch touch;
    private final AddReel addReel;
    private final PasteReels paste;
    private final Supplier<Settings> settings;
    private final ObservableList<Section> sections = FXCollections.observableArrayList();
    private final ObjectProperty<Section> section = new SimpleObjectProperty<>(Section.of(Section.Topic.VISIT));
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    SiteModel(Desk desk) {
        texts = desk.texts(SiteModel.class);
        settings = desk::settings;
        description = new Description(desk);
        IntSupplier year = () -> LocalDate.now(desk.clock()).getYear();
        writing = () -> new Writing(texts, desk.settings());
        setUps = new Items<>(description, () -> "setups", Survey::setUps, Survey::withSetUps);
        reels = ReelList.of(description);
        forms = new SiteForms(always("site", new SiteKind(), SiteKind.PART), always("visit", new VisitKind(), VisitKind.PART),
                always("claim", new ClaimKind(), ClaimKind.PART), always("limits", new LimitsKind(), LimitsKind.PART),
                of(setUps, "setup", new SetUpKind()), of(reels, "reel", new ReelKind(year)));
        coves = new Items<>(description, () -> "coves", Survey::coves, Survey::withCoves);
        Supplier<ReelFinder> finder = () -> new ReelFinder(description.survey(), year.getAsInt());
        cove = new CoveModel(description, coves, writing, finder, texts);
        lay = new LayReel(cove, writing, year, texts);
        touch = new StripTouch(cove, lay, writing, texts);
        addReel = new AddReel(reels, finder, texts);
        paste = new PasteReels(description, writing, year, texts);
        description.surveyProperty().addListener((property, before, now) -> follow());
        section.addListener((property, before, now) -> turn(now));
        desk.surveyProperty().addListener((property, before, now) -> turnToAnother());
        follow();
    }

    /** What was typed for the survey before and not taken does not belong to this one. */
    private void turnToAnother() {
        forms.forget();
        cove.forget();
        section.set(Section.of(Section.Topic.VISIT));
    }

    private <T> Form<T> always(String name, Kind<T> kind, Part<T> part) {
        Form<T> form = new Form<>(name, kind, description, writing, texts);
        form.on(part);
        return form;
    }

    private <T> Form<T> of(Items<T> items, String name, Kind<T> kind) {
        Form<T> form = new Form<>(name, kind, description, writing, texts);
        form.on(items.part(items.chosenProperty().get()));
        items.chosenProperty().addListener((property, before, now) -> form.on(items.part(now.intValue())));
        return form;
    }

    private void follow() {
        List<Section> now = new ArrayList<>(List.of(Section.of(Section.Topic.VISIT), Section.of(Section.Topic.METER),
                Section.of(Section.Topic.LIMITS), Section.of(Section.Topic.REELS)));
        for (int i = 0; i < coves.items().size(); i++) {
            now.add(Section.cove(i));
        }
        if (!sections.equals(now)) {
            sections.setAll(now);
        }
        if (!now.contains(section.get())) {
            section.set(now.get(0));
        }
        if (setUps.chosenProperty().get() < 0) {
            setUps.choose(0); // mostly there is only one
        }
        trouble.set("");
    }

    private void turn(Section now) {
        trouble.set("");
        if (now != null && now.topic() == Section.Topic.COVE) {
            coves.choose(now.cove());
        }
    }

    /** Why a reel cannot be taken out; empty where it can. */
    String placed(Reel one) {
        return description.survey().coves().stream().filter(there -> there.placements().stream().anyMatch(placement ->
                placement.reel().equals(one.id()))).findFirst().map(there -> texts.get("reels.placed", there.id())).orElse("");
    }

    /** Why a set-up cannot be taken out; empty where it can. */
    String needed(SetUp one) {
        return setUps.items().size() == 1 ? texts.get("setups.needed", one.id()) : "";
    }

    /** What can be described; coves last. */
    ObservableList<Section> sections() {
        return sections;
    }

    ObjectProperty<Section> sectionProperty() {
        return section;
    }

    /** The section's name, with the cove's place where it has one. */
    String title(Section named) {
        if (named.topic() != Section.Topic.COVE) {
            return texts.get("section." + named.topic().name().toLowerCase(Locale.ROOT));
        }
        Cove one = description.survey().coves().get(named.cove());
        return one.place().isBlank() ? texts.get("section.cove", one.id()) : texts.get("section.cove-at", one.id(), one.place());
    }

    /** One more cove, with a name that none has, and goes there. */
    void addCove() {
        refuse(coves.add(CoveKind.fresh(coves.items())));
        section.set(Section.cove(coves.items().size() - 1));
    }

    /** Takes the cove out that is described. Readings in it stand against that. */
    void removeCove() {
        if (refuse(coves.removeChosen())) {
            section.set(Section.of(Section.Topic.VISIT));
        }
    }

    void undo() {
        refuse(description.undo());
    }

    private boolean refuse(List<Problem> problems) {
        trouble.set(new Refusals(texts).sentences(problems));
        return problems.isEmpty();
    }

    /** Why the last thing asked for was not done. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** Whether somebody claims something, so that it has to be written down what. */
    boolean asksForClaim() {
        Survey survey = description.survey();
        return survey != null && (survey.claim().isPresent()
                || survey.visit().purpose().filter(why -> why == Purpose.COMPLAINT || why == Purpose.WARRANTY).isPresent());
    }

    Description description() {
        return description;
    }

    Writing writing() {
        return writing.get();
    }

    Texts texts() {
        return texts;
    }

    SiteForms forms() {
        return forms;
    }

    Items<SetUp> setUps() {
        return setUps;
    }

    Items<Reel> reels() {
        return reels;
    }

    CoveModel cove() {
        return cove;
    }

    LayReel lay() {
        return lay;
    }

    AddReel addReel() {
        return addReel;
    }

    PasteReels paste() {
        return paste;
    }

    int textPercent() {
        return settings.get().textPercent();
    }

    StripTouch touch() {
        return touch;
    }
}
