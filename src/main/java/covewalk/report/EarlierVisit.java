package covewalk.report;

import covewalk.survey.Problem;
import covewalk.survey.Survey;
import covewalk.survey.file.EarlierSurvey;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.PunchLog;
import covewalk.survey.file.PunchStates;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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

    /**
     * Finds and judges the survey that one follows, which lies beside it; writes nothing.
     *
     * @param folder of the survey that follows
     * @param toKnow is added to where an earlier survey is named and cannot be used
     */
    public static Optional<EarlierVisit> of(Path folder, Survey survey, boolean correctDrift, List<Problem> toKnow) throws IOException {
        String name = survey.visit().follows();
        if (name.isBlank()) {
            return Optional.empty();
        }
        Outcome<Path> beside = EarlierSurvey.beside(folder, name);
        toKnow.addAll(beside.problems());
        return beside.refused() ? Optional.empty() : at(beside.value().orElseThrow(), name, correctDrift, toKnow);
    }

    private static Optional<EarlierVisit> at(Path folder, String name, boolean correctDrift, List<Problem> toKnow) throws IOException {
        ReadSurvey read = SurveyFolder.at(folder).read();
        Outcome<PunchStates> states = PunchLog.read(folder);
        Optional<Problem> why = Stream.concat(read.problems().stream(), states.problems().stream()).filter(Problem::refused).findFirst();
        if (why.isPresent()) {
            toKnow.add(Problem.warning("survey.follows-unreadable", name, why.get().inFull(Locale.ROOT)));
            return Optional.empty();
        }
        Judgement judgement = new Judge().judge(read.survey().orElseThrow(), read.log(), correctDrift);
        return Optional.of(new EarlierVisit(name, judgement, states.value().orElseThrow()));
    }

    /** Its date, or nothing where nobody noted it. */
    public String date() {
        return judgement.survey().visit().date().map(Object::toString).orElse("");
    }
}
