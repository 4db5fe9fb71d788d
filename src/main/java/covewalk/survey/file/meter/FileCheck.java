package covewalk.survey.file.meter;

import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What stands against a file as a whole. All of it is told at once; then nothing is written. */
final class FileCheck {

    private final Survey survey;
    private final ImportOptions options;
    private final MeterTable table;
    private final Place place;
    private final List<Problem> problems = new ArrayList<>();

    FileCheck(Survey survey, ImportOptions options, MeterTable table) {
        this.survey = survey;
        this.options = options;
        this.table = table;
        this.place = new Place(survey, options, table.columns());
    }

    List<Problem> problems() {
        problems.addAll(NamedColumns.missing(options.named(), table));
        colour();
        twice();
        setUp();
        cove();
        positions();
        return List.copyOf(problems);
    }

    private void colour() {
        if (!table.columns().haveColour()) {
            problems.add(Problem.refusal("import.no-colour", String.join(", ", Columns.mended(table.header()))));
        } else if (table.rows().isEmpty()) {
            problems.add(Problem.refusal("import.no-rows"));
        }
    }

    /** Two columns of one meaning must say the same in every row; brightness in two units is taken in lux. */
    private void twice() {
        Set<MeterField> needed = Set.of(MeterField.CCT_K, MeterField.DUV, MeterField.X, MeterField.Y, MeterField.U_PRIME,
                MeterField.V_PRIME, MeterField.POSITION, MeterField.COVE);
        for (MeterField field : needed.stream().sorted().toList()) {
            List<Column> same = table.columns().all(field);
            boolean differ = same.size() > 1 && table.rows().stream().anyMatch(row -> same.stream()
                    .map(column -> row.cell(column.index())).distinct().count() > 1);
            if (differ) {
                problems.add(Problem.refusal("import.twice", field.code(), same.stream()
                        .map(column -> "" + (column.index() + 1)).collect(Collectors.joining(", "))));
            }
        }
    }

    private void setUp() {
        options.setUp().filter(id -> survey.setUp(id).isEmpty())
                .ifPresent(id -> problems.add(Problem.refusal("import.no-such-setup", id,
                        survey.setUps().stream().map(known -> known.id()).collect(Collectors.joining(", ")))));
    }

    private void cove() {
        String coves = survey.coves().stream().map(Cove::id).collect(Collectors.joining(", "));
        Optional<String> usual = place.usualCove();
        if (usual.isPresent() && survey.cove(usual.get()).isEmpty()) {
            problems.add(Problem.refusal("import.no-such-cove", usual.get(), coves));
        } else if (usual.isEmpty() && table.columns().first(MeterField.COVE).isEmpty()) {
            problems.add(Problem.refusal("import.which-cove", coves));
        }
    }

    private void positions() {
        if (place.hasPositions()) {
            return;
        }
        int rows = table.rows().size();
        if (options.stations() instanceof Stations.Unsaid) {
            problems.add(Problem.refusal("import.no-positions"));
        } else if (options.stations() instanceof Stations.Listed listed && listed.positionsM().size() != rows) {
            problems.add(Problem.refusal("import.positions-count", listed.file(), listed.positionsM().size(), rows));
        } else if (options.stations() instanceof Stations.Evenly evenly && rows > 0) {
            beyondTheEnd(evenly.at(rows - 1), rows);
        }
    }

    private void beyondTheEnd(Typed lastM, int rows) {
        Optional<Cove> cove = place.usualCove().flatMap(survey::cove);
        if (cove.isPresent() && (lastM.value() < 0 || lastM.value() > cove.get().lengthM() + Place.TAPE_M)) {
            problems.add(Problem.refusal("import.beyond-the-end", rows, lastM.text(), cove.get().id(),
                    Place.metres(cove.get().lengthM())));
        }
    }
}
