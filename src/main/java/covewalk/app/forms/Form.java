package covewalk.app.forms;

import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The lines in which one part of the survey is typed. A line is taken by itself as soon as it is left: what cannot be read
 * in one holds up no other, and stays as it was typed with the reason beside it.
 */
public final class Form<T> {

    private final String name;
    private final Kind<T> kind;
    private final Description description;
    private final Supplier<Writing> writing;
    private final Texts texts;
    private final List<FormLine> lines;
    private Part<T> part;

    /**
     * @param name the beginning of its keys and ids, such as {@code cove}
     * @param texts of this package
     */
    public Form(String name, Kind<T> kind, Description description, Supplier<Writing> writing, Texts texts) {
        this.name = name;
        this.kind = kind;
        this.description = description;
        this.writing = writing;
        this.texts = texts.of(Form.class);
        lines = kind.asks().stream().map(FormLine::new).toList();
        description.surveyProperty().addListener((property, before, now) -> show());
    }

    public String name() {
        return name;
    }

    public List<FormLine> lines() {
        return lines;
    }

    public FormLine line(String line) {
        return lines.stream().filter(one -> one.ask().name().equals(line)).findFirst().orElseThrow();
    }

    /** The texts of the lines. */
    Texts texts() {
        return texts;
    }

    /** Turns to a part of the survey; what was typed for another and not taken is forgotten. */
    public void on(Part<T> other) {
        part = other;
        show();
        forget();
    }

    /** Forgets what was typed and not taken. */
    public void forget() {
        lines.forEach(FormLine::showAgain);
    }

    /** Shows what stands in the survey. */
    public void show() {
        Optional<T> thing = thing(description.survey());
        Map<String, String> shown = thing.map(there -> kind.texts(there, writing.get())).orElse(Map.of());
        List<Problem> remarks = thing.isPresent() ? description.remarks() : List.of();
        for (FormLine line : lines) {
            line.show(shown.getOrDefault(line.ask().name(), ""));
            String path = part == null ? "" : part.path() + "." + line.ask().name();
            line.remark(sentences(remarks.stream().filter(problem -> problem.column().equals(path)).toList()));
        }
    }

    private Optional<T> thing(Survey survey) {
        return survey == null || part == null ? Optional.empty() : part.in().apply(survey);
    }

    /** @return whether it was taken; else the line says why not */
    public boolean take(FormLine line) {
        Optional<T> before = thing(description.survey());
        if (before.isEmpty() || line.isAsShown()) {
            line.showAgain();
            return true;
        }
        Answers answers = new Answers(line.ask().name(), line.textProperty().get(), writing.get(), texts);
        T after = kind.read(answers, before.get());
        String why = answers.refusal().isEmpty() ? sentences(description.change(survey -> part.put().apply(survey, after)))
                : answers.refusal();
        if (why.isEmpty()) {
            show(); // a scanned label may have filled in other lines too
            line.showAgain();
        } else {
            line.refuse(why);
        }
        return why.isEmpty();
    }

    /** Takes every line that was typed in and not left yet. */
    public boolean takeAll() {
        return lines.stream().map(this::take).reduce(true, Boolean::logicalAnd);
    }

    private String sentences(List<Problem> problems) {
        return new Refusals(texts).sentences(problems);
    }

}
