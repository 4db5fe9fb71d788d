package covewalk.verdict.stretch;

import covewalk.survey.SetUp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the stretches of one set-up, and their noise. */
public final class Stretches {

    /** The share of coves without a change that may show one. */
    private static final double FALSE_ALARMS_PER_COVE = 0.05;

    private final SetUp setUp;
    private final Noise rough;

    /** @param rows of all coves: the noise is looked for in all of them together */
    public Stretches(List<PlacementRow> rows, SetUp setUp) {
        this.setUp = setUp;
        this.rough = RoughNoise.of(rows, setUp);
    }

    /** The stretches of one cove, along it. */
    public List<Stretch> of(List<PlacementRow> cove) {
        int stations = cove.stream().mapToInt(row -> row.stations().size()).sum();
        double each = FALSE_ALARMS_PER_COVE / Math.max(1, 2 * stations); // lone stations and changes, place by place
        List<Stretch> stretches = new ArrayList<>();
        for (PlacementRow row : cove) {
            if (!row.stations().isEmpty()) {
                stretches.addAll(ofPlacement(row, each));
            }
        }
        return stretches;
    }

    private List<Stretch> ofPlacement(PlacementRow row, double falseAlarms) {
        List<Station> counting = new ArrayList<>(row.stations());
        List<Station> lone = new LoneStations(rough, falseAlarms).takeFrom(counting);
        List<Changes.Part> parts = new Changes(rough, falseAlarms).part(counting);
        List<Stretch> stretches = new ArrayList<>();
        double from = row.placement().fromM();
        for (int i = 0; i < parts.size(); i++) {
            double to = i + 1 < parts.size() ? between(parts.get(i), parts.get(i + 1)) : row.placement().toM();
            stretches.add(stretch(row, parts.get(i), from, to, lone));
            from = to;
        }
        return stretches;
    }

    private Stretch stretch(PlacementRow row, Changes.Part part, double from, double to, List<Station> lone) {
        List<Station> aside = lone.stream()
                .filter(station -> station.positionM() >= from && station.positionM() <= to)
                .sorted(Comparator.comparingDouble(Station::positionM))
                .toList();
        return new Stretch(row.placement(), setUp.id(), from, to, part.stations(), aside, part.line(), rough);
    }

    private static double between(Changes.Part one, Changes.Part other) {
        return (one.stations().get(one.stations().size() - 1).positionM() + other.stations().get(0).positionM()) / 2;
    }

    /** The same stretches, cove by cove, with the scatter about them pooled and their lines fitted by it. */
    public List<List<Stretch>> settled(List<List<Stretch>> coves) {
        PooledNoise noise = new PooledNoise(coves.stream().flatMap(List::stream).toList(), setUp);
        return coves.stream()
                .map(cove -> cove.stream().map(stretch -> stretch.fittedBy(noise.of(stretch))).toList())
                .toList();
    }
}
