package covewalk.app.walk;

import covewalk.app.open.Workers;
import covewalk.app.text.Texts;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Survey;
import covewalk.verdict.StationPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds what is to be said of a reading and the station before it, beside the screen, and has it said. */
record Told(Workers workers, WalkSays says, Texts texts) {

    /** @param walked what was read before it */
    void tell(Survey survey, Walked walked, Reading reading) {
        if (reading.role() == Role.DARK) {
            says.neighbour().set(Neighbour.plain(texts.get("neighbour.dark")));
            return;
        }
        List<Reading> other = reading.role() == Role.REFERENCE ? firstVisit(walked, reading)
                : walked.lastStation(reading.cove(), reading.positionM().value(), reading.setUp());
        List<Reading> here = station(walked, reading);
        workers.sums().execute(() -> {
            Optional<StationPair> pair = StationPair.of(survey, other, here);
            workers.screen().execute(() -> says.pair(pair, reading, survey.limits().neighbourSteps()));
        });
    }

    /** All readings of its station, without one that it corrects; of the reference spot this visit alone. */
    private static List<Reading> station(Walked walked, Reading reading) {
        List<Reading> here = new ArrayList<>();
        if (reading.role() == Role.WALK) {
            here.addAll(walked.station(reading.cove(), reading.positionM().value(), reading.setUp()));
            here.removeIf(other -> other.id().equals(reading.replaces()));
        }
        here.add(reading);
        return here;
    }

    private static List<Reading> firstVisit(Walked walked, Reading reading) {
        return walked.readings().stream().filter(other -> other.role() == Role.REFERENCE && other.setUp().equals(reading.setUp())
                && other.cove().equals(reading.cove()) && other.positionM().value() == reading.positionM().value()).limit(1).toList();
    }
}
