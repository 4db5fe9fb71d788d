package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.Original;
import covewalk.survey.file.Originals;
import covewalk.survey.file.log.ReadingLog;
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
 * unless the first time was cut short or more is said of the file now. A reading that the log has at the same place, time and
 * values is not added again, whatever file it comes from.
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
        if (Files.isSameFile(file, log.lock().folder().resolve(FileNames.LOG))) {
            return ImportResult.refused(List.of(Problem.refusal("import.own-log").at(name, 0, "")));
        }
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
        NewRows found = newRows(rows, original, table);
        List<Reading> fresh = found.fresh().stream().map(row -> withSource(row, original.name())).toList();
        if (!fresh.isEmpty()) {
            log.append(fresh);
        }
        AsideFile.in(log.lock()).add(original.name(), rows);
        return result(file.getFileName().toString(), bytes, options, table, rows, found, original);
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

    private NewRows newRows(List<RowOutcome> rows, Original original, MeterTable table) throws IOException {
        Set<String> tags = SourceTag.in(before);
        EarlierRows earlier = EarlierRows.in(log.lock().folder().resolve(FileNames.ORIGINALS), original.name(), tags, names);
        return new NewRows(rows.stream().filter(row -> row.reading().isPresent()).toList(),
                row -> tags.contains(SourceTag.of(original.name(), row.line())) || earlier.hold(table, row), new KnownReadings(before));
    }

    /** With an id, and with its source in the note. */
    private Reading withSource(RowOutcome row, String original) {
        Reading reading = row.reading().orElseThrow();
        return new Reading(log.nextId(), reading.cove(), reading.positionM(), reading.role(), reading.setUp(), reading.round(),
                reading.colour(), reading.lux(), reading.takenAt(), reading.replaces(),
                SourceTag.before(reading.note(), original, row.row().line()), 0);
    }

    private ImportResult result(String name, byte[] bytes, ImportOptions options, MeterTable table, List<RowOutcome> rows,
                                NewRows found, Original original) {
        List<Problem> setAside = rows.stream().flatMap(row -> row.refusal().stream()
                .map(why -> why.at(name, row.row().line(), why.column()))).toList();
        FileRemarks remarks = new FileRemarks(table, options, rows, survey.visit().date());
        List<Problem> warnings = new ArrayList<>(names.problems());
        warnings.addAll(at(name, found.warnings(rows.size(), original)));
        warnings.addAll(at(name, remarks.warnings()));
        return new ImportResult(rows.size(), found.fresh().size(), found.there(), setAside, warnings, at(name, remarks.questions()),
                at(name, RowAccount.disagreement(bytes, table).stream().toList()));
    }

    private static List<Problem> at(String file, List<Problem> problems) {
        return problems.stream().map(problem -> problem.at(file, problem.line(), problem.column())).toList();
    }
}
