package covewalk.survey;

import java.util.List;

public final class Soundness {

    private Soundness() {
    }

    public static List<Problem> of(Survey survey) {
        return List.of();
    }

    public static List<Problem> ofReadings(Survey survey, List<Reading> log) {
        return List.of();
    }
}
