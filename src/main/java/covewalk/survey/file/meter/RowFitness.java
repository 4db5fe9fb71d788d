package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import java.util.Optional;
import java.util.Set;

/** What makes a row unfit before anybody looks at its numbers. */
final class RowFitness {

    /** How tables title the sums at their end, as {@link HeaderName} leaves them. */
    private static final Set<String> SUMMARIES = Set.of("average", "avg", "mean", "median", "min", "max", "minimum", "maximum", "std",
            "stddev", "standarddeviation", "stdev", "sum", "total", "mittelwert", "durchschnitt", "standardabweichung", "summe",
            "moyenne", "\u00e9carttype", "media", "promedio", "\u5e73\u5747", "\u5e73\u5747\u5024", "\u5e73\u5747\u503c", "\u6700\u5927",
            "\u6700\u5c0f", "\u6700\u5927\u5024", "\u6700\u5c0f\u5024", "\u6700\u5927\u503c", "\u6700\u5c0f\u503c", "\u6a19\u6e96\u504f\u5dee", "\u6807\u51c6\u5dee");

    private final MeterTable table;

    RowFitness(MeterTable table) {
        this.table = table;
    }

    Optional<Problem> problem(MeterRow row) {
        if (!row.fault().isEmpty()) {
            return Optional.of(Problem.refusal(row.fault()));
        }
        if (row.raw().indexOf('\0') >= 0) {
            return Optional.of(Problem.refusal("import.row.zeros"));
        }
        if (row.cells().equals(table.header())) {
            return Optional.of(Problem.refusal("import.row.header-again"));
        }
        if (row.width() > table.columns().width()) {
            return Optional.of(Problem.refusal("import.row.more-cells", row.width(), table.columns().width()));
        }
        return summary(row);
    }

    private static Optional<Problem> summary(MeterRow row) {
        Optional<String> first = row.cells().stream().filter(cell -> !cell.isEmpty()).findFirst();
        return first.filter(cell -> SUMMARIES.contains(HeaderName.of(cell).name()))
                .map(cell -> Problem.refusal("import.row.summary", cell));
    }
}
