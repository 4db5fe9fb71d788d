package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.desk.FolderText;
import covewalk.app.desk.Place;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.report.punch.Audit;
import covewalk.report.page.PageStyle;
import covewalk.report.page.Paper;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.Outcome;
import covewalk.verdict.Judgement;
import covewalk.words.Language;
import covewalk.words.LengthUnit;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What will be in a report, how and where it is to be written, whether it can be now, and what came of it. */
final class ReportModel {

    private final Desk desk;
    private final Texts texts;
    private final ObjectProperty<Language> language;
    private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>(Paper.A4);
    private final ObjectProperty<LengthUnit> lengths;
    private final ForWhom forWhom;
    private final StringProperty folder = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Contents> contents = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper whyNot = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper status = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper done = new ReadOnlyDoubleWrapper();
    private final ReadOnlyBooleanWrapper stoppable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Issued> issued = new ReadOnlyObjectWrapper<>();
    private final InvalidationListener follow = observable -> follow();
    private AtomicBoolean stop = new AtomicBoolean();
    private Judgement issuedOf;
    private Judgement contentsOf;
    private LengthUnit contentsLengths = LengthUnit.M;

    ReportModel(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(ReportModel.class);
        language = new SimpleObjectProperty<>(Language.of(texts.locale().getLanguage()).orElse(Language.ENGLISH));
        lengths = new SimpleObjectProperty<>(desk.settings().lengths());
        forWhom = new ForWhom(desk, texts);
        forWhom.reelProperty().addListener(follow);
        forWhom.readerProperty().addListener(follow);
        folder.addListener(follow);
        desk.surveyProperty().addListener((property, before, now) -> watch(before, now));
        watch(null, desk.survey());
    }

    ObjectProperty<Language> languageProperty() {
        return language;
    }

    ForWhom forWhom() {
        return forWhom;
    }

    ObjectProperty<Paper> paperProperty() {
        return paper;
    }

    /** In which unit positions come first. */
    ObjectProperty<LengthUnit> lengthsProperty() {
        return lengths;
    }

    /** Where the report goes, as typed. */
    StringProperty folderProperty() {
        return folder;
    }

    /** What the report will say; null before the first judgement. */
    ReadOnlyObjectProperty<Contents> contentsProperty() {
        return contents.getReadOnlyProperty();
    }

    /** Why no report can be written now; empty where it can. */
    ReadOnlyStringProperty whyNotProperty() {
        return whyNot.getReadOnlyProperty();
    }

    /** How far it is, or why it was not written. */
    ReadOnlyStringProperty statusProperty() {
        return status.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** Which share of its steps is done, 0 to 1. */
    ReadOnlyDoubleProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    /** Whether it can still be stopped: not once all files are written. */
    ReadOnlyBooleanProperty stoppableProperty() {
        return stoppable.getReadOnlyProperty();
    }

    /** The report written last; null before. */
    ReadOnlyObjectProperty<Issued> issuedProperty() {
        return issued.getReadOnlyProperty();
    }

    private void watch(OpenSurvey before, OpenSurvey now) {
        if (before != null) {
            before.judgementProperty().removeListener(follow);
            before.judgingProperty().removeListener(follow);
            before.waiting().removeListener(follow);
        }
        if (now != null) {
            now.judgementProperty().addListener(follow);
            now.judgingProperty().addListener(follow);
            now.waiting().addListener(follow);
            folder.set(beside(now.folder()).toString());
        }
        status.set("");
        issued.set(null);
        forWhom.begin();
        follow();
    }

    /** Beside the survey's folder, under its name. */
    private static Path beside(Path survey) {
        return survey.toAbsolutePath().resolveSibling(survey.getFileName() + "-report");
    }

    /** Somebody comes here: only for them is said what will be in a report. */
    void arrive() {
        follow();
    }

    private void follow() {
        OpenSurvey survey = desk.survey();
        Judgement judgement = survey == null ? null : survey.judgementProperty().get();
        if (desk.placeProperty().get() == Place.REPORT && (judgement == null || judgement != contentsOf
                || contentsLengths != desk.settings().lengths())) {
            contentsOf = judgement;
            contentsLengths = desk.settings().lengths();
            contents.set(judgement == null ? null
                    : Contents.of(new Audit(judgement, survey.log(), survey.toKnow(), Optional.empty()), texts.words().lengthsIn(contentsLengths)));
        }
        forWhom.follow();
        whyNot.set(whyNot(survey, judgement));
        if (issued.get() != null && judgement != issuedOf) {
            status.set(texts.get("since"));
        }
    }

    private String whyNot(OpenSurvey survey, Judgement judgement) {
        if (survey == null) {
            return texts.get("why-not.no-survey");
        }
        if (survey.hasUnwritten()) {
            return texts.get("why-not.unwritten");
        }
        if (judgement == null || survey.judgingProperty().get()) {
            return texts.get("why-not.judging");
        }
        if (forWhom.chosen().isEmpty()) {
            return texts.get("why-not.no-reel");
        }
        return path().isEmpty() ? texts.get("why-not.no-folder") : "";
    }

    private Optional<Path> path() {
        return FolderText.path(folder.get(), Path.of(System.getProperty("user.home")));
    }

    /** Writes the report, where it can be written. */
    void write() {
        follow(); // the description may have been saved meanwhile
        if (running.get() || !whyNot.get().isEmpty()) {
            return;
        }
        OpenSurvey survey = desk.survey();
        AtomicBoolean stopThis = new AtomicBoolean();
        stop = stopThis;
        running.set(true);
        stoppable.set(true);
        done.set(0);
        issued.set(null);
        issuedOf = survey.judgementProperty().get();
        Choices choices = new Choices(language.get(), new PageStyle(paper.get(), lengths.get()), forWhom.chosen().orElseThrow(),
                path().orElseThrow());
        survey.onDisk(new Issuing(survey.folder(), issuedOf, survey.log(), survey.correctDriftProperty().get(), choices,
                texts, step -> desk.workers().screen().execute(() -> begun(step)), stopThis::get), this::ended);
    }

    private void begun(Issuing.Step step) {
        if (running.get() && !stop.get()) {
            status.set(texts.get("step." + step.code()));
            done.set((1.0 + step.ordinal()) / (1 + Issuing.Step.values().length));
        }
    }

    /** Before the next file is made; what is under way is finished. */
    void stop() {
        stop.set(true);
        stoppable.set(false);
        status.set(texts.get("stopping"));
    }

    private void ended(Outcome<Issuing.Ended> outcome) {
        running.set(false);
        stoppable.set(false);
        if (outcome.refused()) {
            status.set(outcome.problems().stream().map(this::inFull).collect(Collectors.joining(" ")));
            return;
        }
        Issuing.Ended ended = outcome.value().orElseThrow();
        issued.set(ended.issued().orElse(null));
        status.set(ended.says());
    }

    private String inFull(Problem problem) {
        return problem.inFull(texts.locale());
    }
}
