package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.colour.UvPrime;
import covewalk.survey.Cove;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.TypedColour;
import covewalk.verdict.StationPair;
import java.util.List;
import java.util.Optional;

/** Whether a reading lies farther than the limit from what was read just before: a fault, or a slip that a repeat shows. */
final class Jump {

    private Jump() {
    }

    /** Against the readings of the same station where there are some, else against those of the last one. */
    static Optional<Question> of(Survey survey, Cove cove, Walked walked, String setUp, Aim aim, TypedColour typed, Texts texts) {
        List<Reading> here = walked.station(aim.cove(), aim.atM(), setUp);
        List<Reading> other = here.isEmpty() ? walked.lastStation(aim.cove(), aim.atM(), setUp) : here;
        if (other.isEmpty() || !aim.walks()) {
            return Optional.empty();
        }
        double steps = StationPair.steps(survey, cove, mean(other), typed.toUvPrime());
        double limit = survey.limits().neighbourSteps();
        if (!(steps > limit)) {
            return Optional.empty();
        }
        String far = texts.numbers().fixed(steps, 1);
        String most = texts.numbers().plain(limit, 2);
        return Optional.of(new Question(here.isEmpty() ? texts.get("jump.station", far, most) : texts.get("jump.here", far, most), false));
    }

    private static UvPrime mean(List<Reading> readings) {
        double u = 0;
        double v = 0;
        for (Reading reading : readings) {
            UvPrime colour = reading.colour().orElseThrow().toUvPrime();
            u += colour.u() / readings.size();
            v += colour.v() / readings.size();
        }
        return new UvPrime(u, v);
    }
}
