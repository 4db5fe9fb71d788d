package covewalk.report.punch;

import covewalk.survey.Problem;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.EarlierSurvey;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.punch.PunchLog;
import covewalk.survey.file.punch.PunchStates;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The visit that this one follows. Its readings are judged by themselves and never mixed with those of now.
 *
 * @param name of its survey, as {@code visit.follows} says it
 * @param judgement by its own readings and its own limits
 * @param states how its items stood
 */
public record EarlierVisit(String name, Judgement judgement, PunchStates states) {

    public EarlierVisit {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(judgement, "judgement");
        Objects.requireNonNull(states, "states");
    }

    /** What was read of it. */
    private record Found(String name, ReadSurvey survey, PunchStates states) {
    }

    /**
     * Finds and judges the survey that one follows, which lies beside it; writes nothing.
     *
     * @param folder of the survey that follows
     * @param toKnow is added to where an earlier survey is named and cannot be used
     */
    public static Optional<EarlierVisit> of(Path folder, Survey survey, boolean correctDrift, List<Problem> toKnow) throws IOException {
        return find(folder, survey, toKnow).map(found -> new EarlierVisit(found.name(),
                new Judge().judge(found.survey().survey().orElseThrow(), found.survey().log(), correctDrift), found.states()));
    }

    /** Why the survey that one follows could not be used; none where it can, or where one follows none. Judges nothing. */
    public static List<Problem> toKnow(Path folder, Survey survey) throws IOException {
        List<Problem> toKnow = new ArrayList<>();
        find(folder, survey, toKnow);
        return toKnow;
    }

    private static Optional<Found> find(Path folder, Survey survey, List<Problem> toKnow) throws IOException {
        String name = survey.visit().follows();
        if (name.isBlank()) {
            return Optional.empty();
        }
        Outcome<Path> beside = EarlierSurvey.beside(folder, name);
        toKnow.addAll(beside.problems());
        if (beside.refused()) {
            return Optional.empty();
        }
        Outcome<Found> found = at(beside.value().orElseThrow(), name);
        found.problems().stream().map(why -> Problem.warning("survey.follows-unreadable", name).because(why)).forEach(toKnow::add);
        return found.value();
    }

    /** A disk that refuses is told like what is damaged: it is the earlier survey's, and need not stop this one. */
    private static Outcome<Found> at(Path folder, String name) {
        try {
            ReadSurvey read = SurveyFolder.at(folder).read();
            Outcome<PunchStates> states = PunchLog.read(folder);
            Optional<Problem> why = Stream.concat(read.problems().stream(), states.problems().stream()).filter(Problem::refused).findFirst();
            return why.isPresent() ? refused(why.get())
                    : new Outcome<>(Optional.of(new Found(name, read, states.value().orElseThrow())), List.of());
        } catch (IOException failed) {
            return refused(Problem.refusal("folder.failed", DiskWords.reason(failed)));
        }
    }

    private static Outcome<Found> refused(Problem why) {
        return new Outcome<>(Optional.empty(), List.of(why));
    }

    /** Its date, or nothing where nobody noted it. */
    public String date() {
        return judgement.survey().visit().date().map(Object::toString).orElse("");
    }
}
