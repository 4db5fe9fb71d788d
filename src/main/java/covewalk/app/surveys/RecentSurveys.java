package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.forms.Writing;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.InvalidationListener;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The surveys that were open on this computer, and what each still lacks. They are looked at one after the other, in the
 * background and only while somebody looks at the list: the survey that is open has the right of way.
 */
final class RecentSurveys {

    private static final Logger LOG = Logger.getLogger("covewalk.app");

    private final Desk desk;
    private final Texts texts;
    private final ObservableList<KnownSurvey> surveys = FXCollections.observableArrayList();
    /** Held here: whoever listens to it would be forgotten with it. */
    private final ObservableList<KnownSurvey> seen = FXCollections.unmodifiableObservableList(surveys);
    private final Deque<Path> toLookAt = new ArrayDeque<>();
    private final InvalidationListener follow = changed -> showOpen();
    private boolean looking;

    RecentSurveys(Desk desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        desk.surveyProperty().addListener((property, before, now) -> turn(before, now));
        turn(null, desk.survey());
    }

    /** The latest first. */
    ObservableList<KnownSurvey> surveys() {
        return seen;
    }

    private void turn(OpenSurvey before, OpenSurvey now) {
        if (before != null) {
            before.judgementProperty().removeListener(follow);
            before.waiting().removeListener(follow);
        }
        if (now != null) {
            now.judgementProperty().addListener(follow);
            now.waiting().addListener(follow);
        }
        list();
    }

    private void list() {
        surveys.setAll(desk.memoryProperty().get().recent().stream().map(this::asKnown).toList());
        showOpen();
    }

    private KnownSurvey asKnown(Path folder) {
        return surveys.stream().filter(known -> known.folder().equals(folder)).findFirst()
                .orElseGet(() -> new KnownSurvey(folder, String.valueOf(folder.getFileName()), texts.get("recent.looking"), true));
    }

    /** Looks at all of them anew. */
    void look() {
        list();
        toLookAt.clear();
        toLookAt.addAll(desk.memoryProperty().get().recent());
        next();
    }

    void forget(Path folder) {
        desk.forget(folder);
        toLookAt.remove(folder);
        list();
    }

    private void next() {
        boolean wanted = desk.placeProperty().get() == Place.SURVEYS;
        if (looking || !wanted || toLookAt.isEmpty()) {
            return;
        }
        Path folder = toLookAt.poll();
        if (isOpen(folder)) {
            next();
            return;
        }
        looking = true;
        desk.workers().disk().execute(() -> read(folder));
    }

    private boolean isOpen(Path folder) {
        return desk.survey() != null && desk.survey().folder().equals(folder);
    }

    private void read(Path folder) {
        try {
            ReadSurvey read = SurveyFolder.at(folder).read();
            if (read.refused()) {
                List<Problem> why = read.problems().stream().filter(Problem::refused).toList();
                told(refused(folder, why.get(0).sentence(texts.locale())));
            } else {
                desk.workers().sums().execute(() -> told(judged(folder, read)));
            }
        } catch (IOException failed) {
            told(refused(folder, Problem.refusal("folder.failed", DiskWords.reason(failed)).sentence(texts.locale())));
        } catch (RuntimeException | Error fault) {
            told(notLooked(folder, fault));
        }
    }

    private KnownSurvey judged(Path folder, ReadSurvey read) {
        try {
            return looked(folder, read.survey().orElseThrow(), read.log());
        } catch (RuntimeException | Error fault) {
            return notLooked(folder, fault);
        }
    }

    /** A fault of ours with one survey: the others are looked at all the same, and this one may be opened. */
    private KnownSurvey notLooked(Path folder, Throwable fault) {
        LOG.log(Level.WARNING, "could not look at a survey", fault);
        return new KnownSurvey(folder, String.valueOf(folder.getFileName()), texts.get("recent.not-looked"), true);
    }

    private KnownSurvey refused(Path folder, String why) {
        return new KnownSurvey(folder, String.valueOf(folder.getFileName()), why, false);
    }

    private KnownSurvey looked(Path folder, Survey survey, List<Reading> log) {
        return known(folder, survey, Optional.of(Lacks.of(survey, log)), 0);
    }

    private KnownSurvey known(Path folder, Survey survey, Optional<Lacks> lacks, int unkept) {
        String name = survey.site().name().isBlank() ? String.valueOf(folder.getFileName()) : survey.site().name();
        String date = new Writing(texts, desk.settings()).date(survey.visit().date());
        return new KnownSurvey(folder, name, new LacksWords(texts).line(date, lacks, unkept), true);
    }

    private void told(KnownSurvey known) {
        desk.workers().screen().execute(() -> {
            looking = false;
            show(known);
            next();
        });
    }

    /** The survey that is open is judged anyway. */
    private void showOpen() {
        OpenSurvey open = desk.survey();
        if (open != null) {
            Optional<Lacks> lacks = Optional.ofNullable(open.judgementProperty().get())
                    .map(judgement -> Lacks.of(judgement.survey(), open.readings(), judgement));
            show(known(open.folder(), open.survey(), lacks, open.waiting().size()));
        }
    }

    private void show(KnownSurvey known) {
        for (int i = 0; i < surveys.size(); i++) {
            if (surveys.get(i).folder().equals(known.folder()) && !surveys.get(i).equals(known)) {
                surveys.set(i, known);
            }
        }
    }
}
