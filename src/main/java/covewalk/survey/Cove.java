package covewalk.survey;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One continuous installed line of light, measured in metres from its datum end.
 *
 * @param place where it is, in words
 * @param lengthM its length, m
 * @param closed whether its end meets its start
 * @param datum the end that positions are measured from, in words
 * @param heightM height above the floor, m
 * @param surface what the light falls on, in words
 * @param placements in order of position
 */
public record Cove(String id, String place, double lengthM, boolean closed, String datum, OptionalDouble heightM,
                   String surface, Optional<StatedColour> target, List<Feed> feeds, List<Placement> placements) {

    public Cove {
        feeds = List.copyOf(feeds);
        placements = placements.stream().sorted(Placement.ALONG_THE_COVE).toList();
        if (!(lengthM > 0 && Double.isFinite(lengthM))) {
            throw new IllegalArgumentException("cove " + id + " is " + lengthM + " m long: a length lies above 0");
        }
    }

    public Cove withPlacements(List<Placement> others) {
        return new Cove(id, place, lengthM, closed, datum, heightM, surface, target, feeds, others);
    }

    public Cove withFeeds(List<Feed> others) {
        return new Cove(id, place, lengthM, closed, datum, heightM, surface, target, others, placements);
    }

    /** The placement that lights {@code positionM}; where two meet there, the one on the datum's side. */
    public Optional<Placement> placementAt(double positionM) {
        for (Placement placement : placements) { // no stream: asked for every reading of a large log
            if (placement.covers(positionM)) {
                return Optional.of(placement);
            }
        }
        return Optional.empty();
    }

    /** Where one placement follows another, and where a closed cove's end meets its start. */
    public List<Joint> joints() {
        return Joint.of(this);
    }
}
