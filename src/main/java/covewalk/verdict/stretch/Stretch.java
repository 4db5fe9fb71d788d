package covewalk.verdict.stretch;

import covewalk.survey.Placement;
import java.util.List;

/**
 * A part of one placement found to be of one colour, or of one steady drift.
 *
 * @param setUp whose readings it was found by
 * @param fromM its datum end, m: the placement's, or half way between the two stations where the colour changes
 * @param toM its far end, m
 * @param stations those that count, from the datum on; at least one
 * @param aside stations in it that do not count, each off its neighbours on both sides
 * @param line its colour along its length
 */
public record Stretch(Placement placement, String setUp, double fromM, double toM, List<Station> stations,
                      List<Station> aside, Line line) {

    public Stretch {
        stations = List.copyOf(stations);
        aside = List.copyOf(aside);
    }

    public double middleM() {
        return (fromM + toM) / 2;
    }
}
