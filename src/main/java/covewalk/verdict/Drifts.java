package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.survey.Feed;
import covewalk.verdict.stretch.Line;
import covewalk.verdict.stretch.Parts;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** The two sides of a drift along a stretch, and whether the light falls with it. */
final class Drifts {

    /** Lux lower by this much at the far end is taken for darker, not for noise (common practice, no source). */
    private static final double DARKER = 0.97;

    private Drifts() {
    }

    /** The colour at the start of the line; the slope's uncertainty is counted at the {@link #end} alone. */
    static Side start(Stretch stretch) {
        Line line = stretch.line();
        Side start = Side.of(stretch, stretch.fromM());
        return start.as(line.at(stretch.fromM()), Parts.NONE, Parts.NONE, Covariance.ZERO);
    }

    /** The colour at the end of the line, with the uncertainty of the whole change from the start. */
    static Side end(Stretch stretch) {
        Line line = stretch.line();
        Side end = Side.of(stretch, stretch.toM());
        double length = stretch.lengthM();
        return end.as(line.at(stretch.toM()), line.slopeParts().times(length * length), Parts.NONE, line.common());
    }

    /** A station that was set aside, against the stretch it lies in. */
    static Side alone(Stretch stretch, Station station) {
        Side whole = Side.of(stretch, station.positionM());
        return new Side(station.mean(), stretch.noise().of(station), Parts.NONE, Covariance.ZERO, stretch.noise().stayingInTheMean(station.digits()),
                whole.oneMore(), whole.degrees(), whole.repeatabilityMeasured(), false, 1, station.readings().size(), station.round(),
                station.lux());
    }

    /** Whether it gets darker along the stretch, away from the nearest feed. */
    static boolean darkerAwayFromFeed(Stretch stretch, List<Feed> feeds) {
        OptionalDouble atStart = Lux.at(stretch, stretch.fromM());
        OptionalDouble atEnd = Lux.at(stretch, stretch.toM());
        if (feeds.isEmpty() || atStart.isEmpty() || atEnd.isEmpty()) {
            return false;
        }
        double near = distance(stretch.fromM(), feeds);
        double far = distance(stretch.toM(), feeds);
        double ratio = atEnd.getAsDouble() / atStart.getAsDouble();
        return near < far ? ratio < DARKER : 1 / ratio < DARKER;
    }

    private static double distance(double positionM, List<Feed> feeds) {
        return feeds.stream().map(feed -> Math.abs(feed.atM() - positionM)).min(Comparator.naturalOrder()).orElseThrow();
    }
}
