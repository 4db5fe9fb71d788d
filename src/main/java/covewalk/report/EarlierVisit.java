package covewalk.report;

import covewalk.survey.file.PunchStates;
import covewalk.verdict.Judgement;
import java.util.Objects;

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

    /** Its date, or nothing where nobody noted it. */
    public String date() {
        return judgement.survey().visit().date().map(Object::toString).orElse("");
    }
}
