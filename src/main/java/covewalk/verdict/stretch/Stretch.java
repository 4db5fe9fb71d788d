package covewalk.verdict.stretch;

import covewalk.survey.Placement;
import java.util.List;

/**
 * A part of one placement found to be of one colour, or of one steady drift.
 *
 * @param setUp whose readings it was found by
 * @param fromM its datum end, m: the placement's, or half way between the two stations where the colour changes
 * @param toM its far end, m
 * @param begins where its datum end may lie, as sure as 95 %; exactly there where a placement begins
 * @param stations those that count, from the datum on; at least one
 * @param aside stations in it that do not count, each off its neighbours on both sides
 * @param line its colour along its length
 * @param noise of its stations
 */
public record Stretch(Placement placement, String setUp, double fromM, double toM, Range begins,
                      List<Station> stations, List<Station> aside, Line line, Noise noise) {

    /** From one position to another, m. */
    public record Range(double fromM, double toM) {
    }

    public Stretch {
        stations = List.copyOf(stations);
        aside = List.copyOf(aside);
    }

    public double lengthM() {
        return toM - fromM;
    }

    public double middleM() {
        return (fromM + toM) / 2;
    }

    /** How many readings count in it. */
    public int readings() {
        int readings = 0;
        for (Station station : stations) {
            readings += station.readings().size();
        }
        return readings;
    }

    /** The highest round among them. */
    public int round() {
        int round = 1;
        for (Station station : stations) {
            round = Math.max(round, station.round());
        }
        return round;
    }

    /** How its ends are judged. From one station no slope can be told: there it is taken to be of one colour. */
    public Ending ending() {
        return line.drifts() || !LineFit.slopes(stations) ? Ending.of(line)
                : Ending.between(new LineFit(stations, noise).sloping(), noise.degrees());
    }

    Stretch fittedBy(Noise better) {
        LineFit fit = new LineFit(stations, better);
        return new Stretch(placement, setUp, fromM, toM, begins, stations, aside, line.drifts() ? fit.sloping() : fit.level(),
                better);
    }

    /** The first or the last half of it as a stretch of one colour, for the ends of a closed cove with one reel. */
    public Stretch half(boolean first) {
        int middle = (stations.size() + 1) / 2;
        List<Station> part = first ? stations.subList(0, middle) : stations.subList(stations.size() / 2, stations.size());
        return new Stretch(placement, setUp, fromM, toM, begins, part, List.of(), new LineFit(part, noise).level(), noise);
    }
}
