package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.FileNames;
import covewalk.survey.file.Original;
import covewalk.survey.file.Originals;
import covewalk.survey.file.ReadingLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Adds a meter's exported file to a survey's log. Either the file is refused as a whole and nothing is written, or it
 * is kept byte for byte in {@code originals/}, each row that can be read is in the log, and each other row is in
 * {@code set-aside.csv} with the reason. Done again with the same file it adds only what is missing, which is nothing
 * unless the first time was cut short or more is said of the file now.
 */
public final class MeterImport {

    private final Survey survey;
    private final List<Reading> before;
    private final ReadingLog log;
    private final HeaderTable names;

    /**
     * @param before what is in the log, in its order
     * @param log the same log, open to be added to
     * @param names {@link HeaderTable#ofTheTradeAnd} the survey's folder
     */
    public MeterImport(Survey survey, List<Reading> before, ReadingLog log, HeaderTable names) {
        this.survey = survey;
        this.before = List.copyOf(before);
        this.log = log;
        this.names = names;
    }

    /**
     * Adds the file's rows.
     *
     * @throws IOException where the disk fails; what was kept until then stays kept, and importing again completes it
     */
    public ImportResult add(Path file, ImportOptions options) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        String name = file.getFileName().toString();
        List<Problem> unknown = NamedColumns.unknownFields(options.named(), names);
        if (!unknown.isEmpty()) {
            return ImportResult.refused(unknown);
        }
        Map<String, HeaderMeaning> named = NamedColumns.of(options.named(), names);
        Optional<MeterTable> table = MeterTable.in(FileText.readingsOf(bytes), names, named);
        if (table.isEmpty()) {
            return ImportResult.refused(List.of(noTable(bytes).at(name, 0, "")));
        }
        List<Problem> against = new FileCheck(survey, options, table.get()).problems();
        return against.isEmpty() ? add(file, bytes, options, table.get()) : ImportResult.refused(at(name, against));
    }

    private Problem noTable(byte[] bytes) {
        List<MeterRow> rows = new RowSplitter(FileText.readingsOf(bytes).get(0).text(), ',').first(1);
        return rows.isEmpty() ? Problem.refusal("import.empty") : Problem.refusal("import.no-header", rows.get(0).excerpt());
    }

    private ImportResult add(Path file, byte[] bytes, ImportOptions options, MeterTable table) throws IOException {
        Original original = Originals.in(log.lock().folder()).keep(file, log.lock());
        List<RowOutcome> rows = read(options, table);
        List<Reading> fresh = fresh(rows, original, table);
        if (!fresh.isEmpty()) {
            log.append(fresh);
        }
        AsideFile.in(log.lock()).add(original.name(), rows);
        return result(file.getFileName().toString(), bytes, options, table, rows, fresh.size(), original);
    }

    private List<RowOutcome> read(ImportOptions options, MeterTable table) {
        RowMeaning meaning = new RowMeaning(table, new Place(survey, options, table.columns()),
                options.setUp().orElse(survey.firstSetUp().id()));
        List<RowOutcome> rows = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            rows.add(meaning.read(table.rows().get(i), i));
        }
        return rows;
    }

    /** The readings that are not in the log yet, with ids and with their source in the note. */
    private List<Reading> fresh(List<RowOutcome> rows, Original original, MeterTable table) throws IOException {
        Set<String> tags = SourceTag.in(before);
        EarlierRows earlier = EarlierRows.in(log.lock().folder().resolve(FileNames.ORIGINALS), original.name(), tags, names);
        List<Reading> fresh = new ArrayList<>();
        for (RowOutcome row : rows) {
            int line = row.row().line();
            if (row.reading().isPresent() && !tags.contains(SourceTag.of(original.name(), line)) && !earlier.hold(table, row.row())) {
                fresh.add(withSource(row.reading().get(), original.name(), line));
            }
        }
        return fresh;
    }

    private Reading withSource(Reading reading, String original, int line) {
        return new Reading(log.nextId(), reading.cove(), reading.positionM(), reading.role(), reading.setUp(), reading.round(),
                reading.colour(), reading.lux(), reading.takenAt(), reading.replaces(), SourceTag.before(reading.note(), original, line), 0);
    }

    private ImportResult result(String name, byte[] bytes, ImportOptions options, MeterTable table, List<RowOutcome> rows,
                                int kept, Original original) {
        List<Problem> setAside = rows.stream().flatMap(row -> row.refusal().stream()
                .map(why -> why.at(name, row.row().line(), why.column()))).toList();
        int there = rows.size() - setAside.size() - kept;
        FileRemarks remarks = new FileRemarks(table, options, rows, survey.visit().date());
        List<Problem> warnings = new ArrayList<>(names.problems());
        if (there > 0) {
            warnings.add(Problem.warning(original.wasThere() ? "import.same-file" : "import.rows-known", there, rows.size(), original.name())
                    .at(name, 0, ""));
        }
        warnings.addAll(at(name, remarks.warnings()));
        return new ImportResult(rows.size(), kept, there, setAside, warnings, at(name, remarks.questions()),
                at(name, RowAccount.disagreement(bytes, table).stream().toList()));
    }

    private static List<Problem> at(String file, List<Problem> problems) {
        return problems.stream().map(problem -> problem.at(file, problem.line(), problem.column())).toList();
    }
}
