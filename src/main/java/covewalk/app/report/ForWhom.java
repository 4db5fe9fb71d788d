package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.forms.ReelFinder;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.report.Readership;
import covewalk.report.Readership.Reader;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** For whom the report is: everybody, or one reader who gets a page more, and which reel a dossier is about. */
final class ForWhom {

    private static final int OFFERED = 6;

    private final Desk desk;
    private final Texts texts;
    private final ObjectProperty<Reader> reader = new SimpleObjectProperty<>(Reader.EVERYBODY);
    private final StringProperty reel = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ObservableList<Reel> offered = FXCollections.observableArrayList();

    ForWhom(Desk desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        reader.addListener((property, before, now) -> follow());
        reel.addListener((property, before, now) -> follow());
    }

    ObjectProperty<Reader> readerProperty() {
        return reader;
    }

    /** The reel of the dossier as typed or scanned: its id, its serial, or the code on its label. */
    StringProperty reelProperty() {
        return reel;
    }

    /** Which reel that is, or why none. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** Reels that may be meant; before anything is typed, those at places beyond the limit. */
    ObservableList<Reel> offered() {
        return offered;
    }

    /** Another survey: its reels are others. */
    void begin() {
        reader.set(Reader.EVERYBODY);
        reel.set("");
        follow();
    }

    /** The survey or what was found in it has changed. */
    void follow() {
        OpenSurvey open = desk.survey();
        if (open == null || reader.get() != Reader.WARRANTY) {
            says.set("");
            offered.clear();
            return;
        }
        List<Reel> named = named(open.survey());
        offered.setAll(named.size() == 1 ? List.of() : named.size() > 1 ? named.stream().limit(OFFERED).toList() : maybe(open));
        says.set(answer(named));
    }

    private String answer(List<Reel> named) {
        if (reel.get().isBlank()) {
            return texts.get("reel.which");
        }
        if (named.isEmpty()) {
            return texts.get("reel.none", reel.get().strip());
        }
        String ids = named.stream().map(Reel::id).collect(Collectors.joining(", "));
        return texts.get(named.size() == 1 ? "reel.is" : "reel.several", ids);
    }

    /** As the command line finds it; a scanned label counts too. */
    private List<Reel> named(Survey survey) {
        List<Reel> named = Readership.reelsNamed(reel.get().strip(), survey);
        return named.isEmpty() ? new ReelFinder(survey, LocalDate.now(desk.clock()).getYear()).known(reel.get()).stream().toList() : named;
    }

    private List<Reel> maybe(OpenSurvey open) {
        if (!reel.get().isBlank()) {
            return new ReelFinder(open.survey(), LocalDate.now(desk.clock()).getYear()).offered(reel.get());
        }
        return Optional.ofNullable(open.judgementProperty().get()).map(judgement -> beyond(judgement, open.survey())).orElse(List.of());
    }

    private static List<Reel> beyond(Judgement judgement, Survey survey) {
        return judgement.coves().stream().flatMap(cove -> cove.faults().stream()).filter(fault -> fault.verdict() == Verdict.BEYOND)
                .flatMap(fault -> fault.reels().stream()).distinct().flatMap(id -> survey.reel(id).stream()).limit(OFFERED).toList();
    }

    /** What was chosen; empty while no single reel is named for the dossier. */
    Optional<Readership> chosen() {
        if (reader.get() != Reader.WARRANTY) {
            return Optional.of(new Readership(reader.get(), Optional.empty()));
        }
        return Optional.ofNullable(desk.survey()).map(open -> named(open.survey())).filter(named -> named.size() == 1)
                .map(named -> new Readership(Reader.WARRANTY, Optional.of(named.get(0))));
    }
}
