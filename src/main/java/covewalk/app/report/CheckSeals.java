package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.report.VerifiedWords;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.seal.SealCheck;
import covewalk.survey.file.seal.Verified;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Whether the survey is what was sealed: by the seals in its folder, or by the code on a report. Writes nothing. */
final class CheckSeals {

    private final Desk desk;
    private final Texts texts;
    private final VerifiedWords words;
    private final StringProperty code = new SimpleStringProperty("");
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ObservableList<String> answer = FXCollections.observableArrayList();
    /** Held, since who listens to a value that nobody holds hears nothing after a while. */
    private final ObservableValue<?> judgement;

    CheckSeals(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(CheckSeals.class);
        this.words = new VerifiedWords(texts.words());
        judgement = desk.surveyProperty().flatMap(OpenSurvey::judgementProperty);
        judgement.addListener((property, before, now) -> forget());
        desk.surveyProperty().addListener((property, before, now) -> code.set(""));
        code.addListener((property, before, now) -> forget());
    }

    /** The code on the report as typed; where it is empty the survey's own seals count. */
    StringProperty codeProperty() {
        return code;
    }

    ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** What was found, sentence by sentence, the most important one first; none before it was asked. */
    ObservableList<String> answer() {
        return answer;
    }

    /** Something has changed: what was found holds no longer. */
    void forget() {
        answer.clear();
    }

    /** Beside the screen: every file of the survey is read for it. */
    void check() {
        OpenSurvey survey = desk.survey();
        if (survey == null || running.get()) {
            return;
        }
        String typed = code.get().strip();
        running.set(true);
        answer.setAll(texts.get("seals.running"));
        desk.workers().sums().execute(() -> {
            List<String> found = found(survey.folder(), typed);
            desk.workers().screen().execute(() -> {
                running.set(false);
                answer.setAll(survey == desk.survey() && typed.equals(code.get().strip()) ? found : List.of());
            });
        });
    }

    private List<String> found(Path folder, String typed) {
        try {
            return typed.isEmpty() ? own(SealCheck.bySeals(folder)) : byCode(SealCheck.byCode(folder, typed));
        } catch (IOException failed) {
            return List.of(Problem.refusal("folder.failed", DiskWords.reason(failed)).sentence(texts.locale()));
        }
    }

    private List<String> own(Outcome<List<Verified>> outcome) {
        Optional<List<Verified>> seals = outcome.value();
        if (seals.isEmpty()) {
            return refusal(outcome.problems());
        }
        int last = seals.get().size() - 1;
        List<String> said = new ArrayList<>(sentences(words.result(seals.get().get(last)), seals.get().get(last)));
        seals.get().subList(0, last).forEach(seal -> said.addAll(sentences(words.earlier(seal), seal)));
        said.add(words.ownSeals());
        return said;
    }

    private List<String> byCode(Outcome<Verified> outcome) {
        return outcome.value().map(verified -> sentences(words.result(verified), verified)).orElseGet(() -> refusal(outcome.problems()));
    }

    private List<String> refusal(List<Problem> problems) {
        return List.of(problems.stream().map(problem -> problem.sentence(texts.locale())).collect(Collectors.joining(" ")));
    }

    private List<String> sentences(String head, Verified verified) {
        List<String> said = new ArrayList<>(List.of(head));
        verified.changes().forEach(change -> said.add(words.change(change)));
        return said;
    }
}
