package covewalk.survey.file.meter;

import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import java.math.BigDecimal;
import java.util.Optional;

/** Where each row of a file belongs: its cove and its position there. */
final class Place {

    /** A length measured to the millimetre may reach past the end by one. */
    static final double TAPE_M = 0.0015;

    private final Survey survey;
    private final ImportOptions options;
    private final Columns columns;

    Place(Survey survey, ImportOptions options, Columns columns) {
        this.survey = survey;
        this.options = options;
        this.columns = columns;
    }

    /** The id of the cove that rows belong to which name none; empty where the survey has several and nobody chose. */
    Optional<String> usualCove() {
        Optional<String> only = survey.coves().size() == 1 ? Optional.of(survey.coves().get(0).id()) : Optional.empty();
        return options.cove().or(() -> only);
    }

    boolean hasPositions() {
        return columns.first(MeterField.POSITION).isPresent();
    }

    Optional<Cove> cove(NumberCells cells) {
        String named = cells.text(MeterField.COVE);
        return named.isEmpty() ? usualCove().flatMap(survey::cove) : survey.cove(named);
    }

    /** @param index the row's place in the file's rows, from 0 */
    Optional<Typed> positionM(NumberCells cells, int index) {
        if (hasPositions()) {
            return cells.metres(MeterField.POSITION);
        }
        if (options.stations() instanceof Stations.Evenly evenly) {
            return Optional.of(evenly.at(index));
        }
        return options.stations() instanceof Stations.Listed listed ? Optional.of(listed.positionsM().get(index)) : Optional.empty();
    }

    /** What is wrong with the cove and position of a row, if anything is. */
    Optional<Problem> problem(NumberCells cells, int index) {
        Optional<Cove> cove = cove(cells);
        if (cove.isEmpty()) {
            String named = cells.text(MeterField.COVE);
            return Optional.of((named.isEmpty() ? Problem.refusal("import.row.no-cove") : Problem.refusal("import.row.unknown-cove",
                    MeterRow.excerpt(named))).inColumn(cells.title(MeterField.COVE)));
        }
        Optional<Typed> position = positionM(cells, index);
        if (position.isEmpty()) {
            String found = cells.text(MeterField.POSITION);
            return Optional.of(Problem.refusal(found.isEmpty() ? "import.row.no-position" : "import.no-length", MeterRow.excerpt(found))
                    .inColumn(cells.title(MeterField.POSITION)));
        }
        return outside(cove.get(), position.get()).map(problem -> problem.inColumn(cells.title(MeterField.POSITION)));
    }

    private static Optional<Problem> outside(Cove cove, Typed positionM) {
        boolean inside = positionM.value() >= 0 && positionM.value() <= cove.lengthM() + TAPE_M;
        return inside ? Optional.empty()
                : Optional.of(Problem.refusal("import.row.outside-cove", positionM.text(), cove.id(), metres(cove.lengthM())));
    }

    static String metres(double lengthM) {
        return BigDecimal.valueOf(lengthM).stripTrailingZeros().toPlainString();
    }
}
