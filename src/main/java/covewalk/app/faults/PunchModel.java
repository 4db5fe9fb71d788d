package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.open.OpenSurvey;
import covewalk.app.strip.Finding;
import covewalk.app.text.Texts;
import covewalk.report.punch.NumberedList;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.StateWords;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.verdict.Fault;
import covewalk.verdict.Judgement;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.StringProperty;

/** How the chosen fault stands as an item of the punch list, and what is typed about it. */
final class PunchModel {

    private final Desk desk;
    private final Texts texts;
    private final PunchFields fields = new PunchFields();
    private final ReadOnlyObjectWrapper<PunchItem> item = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper before = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper status = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper unread = new ReadOnlyStringWrapper("");
    private Finding finding;
    private OpenSurvey readOf;
    private PunchReading reading;

    PunchModel(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(PunchModel.class);
    }

    /** The item that stands for the chosen fault; null where there is none, or while it is looked up. */
    ReadOnlyObjectProperty<PunchItem> itemProperty() {
        return item.getReadOnlyProperty();
    }

    /** As "Item 3: open"; empty where there is no item. */
    ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** What an earlier visit found there; empty where this visit follows none. */
    ReadOnlyStringProperty beforeProperty() {
        return before.getReadOnlyProperty();
    }

    /** Whether it was recorded, or why not. */
    ReadOnlyStringProperty statusProperty() {
        return status.getReadOnlyProperty();
    }

    /** Why the item could not be looked up, so that what is shown may be of a moment ago; empty where it could. */
    ReadOnlyStringProperty unreadProperty() {
        return unread.getReadOnlyProperty();
    }

    StringProperty typed(PunchColumn column) {
        return fields.typed(column);
    }

    /** Puts today's date into a column, where it is still empty. */
    void today(PunchColumn column) {
        if (typed(column).get().isBlank()) {
            typed(column).set(LocalDate.now(desk.clock()).toString());
        }
    }

    /** @param chosen null where nothing is */
    void look(Finding chosen) {
        if (chosen == null || finding == null || !chosen.sameAs(finding)) {
            fields.leave();
            status.set("");
            unread.set("");
            before.set("");
            show(null);
        }
        finding = chosen;
        if (chosen != null && (chosen.fault().isPresent() || !desk.survey().survey().visit().follows().isBlank())) {
            readAnew();
        }
    }

    private void show(PunchItem now) {
        item.set(now);
        title.set(now == null ? "" : texts.get("punch.item", texts.numbers().fixed(now.number(), 0),
                texts.words().text("state." + now.state().stage().code())));
        if (now != null) {
            fields.show(now.state());
        }
    }

    /** Beside the screen: an earlier visit may have to be judged for it. */
    private void readAnew() {
        OpenSurvey survey = desk.survey();
        Judgement judgement = survey.judgementProperty().get();
        boolean corrected = survey.correctDriftProperty().get();
        Optional<NumberedList> known = Optional.ofNullable(reading).filter(there -> readOf == survey && there.corrected() == corrected)
                .flatMap(PunchReading::numbered);
        Path folder = survey.folder();
        desk.workers().sums().execute(() -> {
            PunchReading now = PunchReading.of(folder, judgement, corrected, known);
            desk.workers().screen().execute(() -> told(survey, now));
        });
    }

    private void told(OpenSurvey survey, PunchReading now) {
        if (survey != desk.survey()) {
            return;
        }
        if (now.list().isEmpty()) { // what is shown, and typed, stays: it can be recorded once the log is there again
            unread.set(now.problems().isEmpty() ? texts.get("punch.fault") : inWords(now.problems()));
            return;
        }
        unread.set("");
        readOf = survey;
        reading = now;
        show(finding == null ? null
                : now.list().flatMap(list -> list.items().stream().filter(standsFor(finding)).findFirst()).orElse(null));
        before.set(finding == null ? "" : now.numbered().map(this::before).orElse(""));
    }

    /** As the report says it: what the visit before found there, or that an item of it is no longer found. */
    private String before(NumberedList numbered) {
        if (!numbered.ofOldVisit().isEmpty()) {
            return inWords(numbered.ofOldVisit());
        }
        StateWords words = new StateWords(texts.words());
        PunchPlace here = PunchPlace.of(finding.cove().cove().id(), finding.kind().code(), finding.positionM(), finding.reels());
        return numbered.list().gone().stream()
                .filter(gone -> finding.fault().isEmpty() && gone.state().place().filter(here::isLike).isPresent()).findFirst()
                .map(gone -> words.inShort(numbered.list(), gone))
                .or(() -> words.before(numbered.list(), here)).orElse("");
    }

    private static Predicate<PunchItem> standsFor(Finding finding) {
        return there -> there.cove().id().equals(finding.cove().cove().id())
                && Stream.concat(Stream.of(there.fault()), there.alike().stream()).anyMatch(fault -> isAt(fault, finding));
    }

    private static boolean isAt(Fault fault, Finding finding) {
        return fault.kind() == finding.kind() && fault.reels().equals(finding.reels())
                && Math.abs(fault.positionM() - finding.positionM()) < PunchItem.SAME_PLACE_M;
    }

    /** Puts on disk what was typed, where it can stand there. */
    void record() {
        Map<PunchColumn, String> cells = fields.changed();
        List<Problem> wrong = fields.wrong();
        if (item.get() == null || cells.isEmpty() || !wrong.isEmpty()) {
            status.set(wrong.isEmpty() ? texts.get("punch.nothing") : inWords(wrong));
            return;
        }
        OpenSurvey survey = desk.survey();
        Finding here = finding;
        survey.onDisk(new Recording(survey.judgementProperty().get(), reading.before(), standsFor(here), cells),
                outcome -> recorded(outcome, here, cells));
    }

    private void recorded(Outcome<List<Problem>> outcome, Finding where, Map<PunchColumn, String> cells) {
        List<Problem> problems = outcome.value().orElse(outcome.problems());
        boolean refused = problems.stream().anyMatch(Problem::refused);
        if (finding != null && finding.sameAs(where)) {
            status.set(refused ? inWords(problems) : texts.get("punch.recorded"));
            if (!refused) {
                fields.recorded(cells);
                readAnew();
            }
        }
    }

    private String inWords(List<Problem> problems) {
        return problems.stream().map(problem -> problem.sentence(texts.locale())).distinct().collect(Collectors.joining(" "));
    }
}
