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
    private final Repeatability repeatability;
    private final Noise rough;

    /** @param rows of all coves: the noise is looked for in all of them together */
    public Stretches(List<PlacementRow> rows, SetUp setUp) {
        this.setUp = setUp;
        this.repeatability = Repeatability.over(rows, setUp);
        this.rough = RoughNoise.of(rows, repeatability);
    }

    /** The stretches of one cove, along it. */
    public List<Stretch> of(List<PlacementRow> cove) {
        int stations = cove.stream().mapToInt(row -> row.stations().size()).sum();
        FalseAlarms each = FalseAlarms.of(FALSE_ALARMS_PER_COVE, stations, cove.size(), rough.degrees());
        List<Stretch> stretches = new ArrayList<>();
        for (PlacementRow row : cove) {
            if (!row.stations().isEmpty()) {
                stretches.addAll(ofPlacement(row, each));
            }
        }
        return stretches;
    }

    private List<Stretch> ofPlacement(PlacementRow row, FalseAlarms each) {
        List<Station> counting = new ArrayList<>(row.stations());
        List<Station> lone = new LoneStations(rough, each.loneStation()).takeFrom(counting);
        double penalty = Significance.exceededIn(each.change(), rough.degrees());
        List<Partition.Run> runs = new Partition(counting, rough, penalty).best();
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            double to = i + 1 < runs.size() ? start(counting, runs.get(i + 1)) : row.placement().toM();
            stretches.add(stretch(row, counting, runs.get(i), to, lone));
        }
        return stretches;
    }

    private Stretch stretch(PlacementRow row, List<Station> counting, Partition.Run run, double to, List<Station> lone) {
        double from = run.from() == 0 ? row.placement().fromM() : start(counting, run);
        List<Station> aside = lone.stream()
                .filter(station -> station.positionM() >= from
                        && (station.positionM() < to || to == row.placement().toM()))
                .sorted(Comparator.comparingDouble(Station::positionM))
                .toList();
        List<Station> stations = counting.subList(run.from(), run.to());
        LineFit fit = new LineFit(stations, rough);
        return new Stretch(row.placement(), setUp.id(), from, to, begins(row, counting, run), stations, aside,
                run.drifts() ? fit.sloping() : fit.level(), rough);
    }

    private static double start(List<Station> counting, Partition.Run run) {
        return (counting.get(run.from() - 1).positionM() + counting.get(run.from()).positionM()) / 2;
    }

    private static Stretch.Range begins(PlacementRow row, List<Station> counting, Partition.Run run) {
        return run.from() == 0 ? new Stretch.Range(row.placement().fromM(), row.placement().fromM())
                : new Stretch.Range(counting.get(run.earliest() - 1).positionM(), counting.get(run.latest()).positionM());
    }

    /** The same stretches, cove by cove, with the scatter about them pooled and their lines fitted by it. */
    public List<List<Stretch>> settled(List<List<Stretch>> coves) {
        PooledNoise noise = new PooledNoise(coves.stream().flatMap(List::stream).toList(), repeatability);
        return coves.parallelStream()
                .map(cove -> cove.stream().map(stretch -> stretch.fittedBy(noise.of(stretch))).toList())
                .toList();
    }
}
