package covewalk.report.page;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.UvPrime;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Station;
import covewalk.words.Lengths;
import covewalk.words.Numbers;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The stations of a cove in two columns side by side, the second going on where the first ends. */
final class StationTable {

    /** Cells of one station. */
    static final List<String> COLUMNS = List.of("at", "readings", "u", "v", "cct", "duv", "lx");

    private static final String NONE = "–";

    private final Numbers numbers;
    private final Lengths lengths;

    StationTable(Words words) {
        this.numbers = words.numbers();
        this.lengths = words.lengths();
    }

    /** Rows of two stations each; the last one may have empty cells. */
    List<List<String>> rows(CoveJudgement cove) {
        List<Station> stations = cove.stations();
        int half = (stations.size() + 1) / 2;
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            List<String> row = new ArrayList<>(cells(stations.get(i)));
            row.addAll(half + i < stations.size() ? cells(stations.get(half + i)) : COLUMNS.stream().map(column -> "").toList());
            rows.add(row);
        }
        return rows;
    }

    private List<String> cells(Station station) {
        UvPrime mean = station.mean();
        ColourTemperature temperature = ColourTemperature.of(mean);
        boolean white = temperature instanceof CctDuv;
        return List.of(lengths.cell(station.positionM()), numbers.fixed(station.readings().size(), 0), numbers.fixed(mean.u(), 4), numbers.fixed(mean.v(), 4),
                white ? numbers.fixed(((CctDuv) temperature).cctK(), 0) : NONE,
                white ? numbers.fixed(((CctDuv) temperature).duv(), 4) : NONE,
                station.lux().isPresent() ? numbers.plain(station.lux().getAsDouble(), 0) : NONE);
    }
}
