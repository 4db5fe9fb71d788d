package covewalk.cli;

import covewalk.survey.Problem;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.log.ReadingLog;
import covewalk.survey.file.meter.HeaderTable;
import covewalk.survey.file.meter.ImportOptions;
import covewalk.survey.file.meter.ImportResult;
import covewalk.survey.file.meter.MeterImport;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code covewalk import SURVEY FILE}. */
@Command(name = "import", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Adds a meter's export to a survey.",
        description = "Adds the readings of a meter's CSV export to a survey's log. The file is kept byte for byte in the"
                + " survey's folder; rows that cannot be read are set aside with the reason, and the rest is kept.",
        footer = {"", "Importing the same file again adds nothing. Exit code 0: all rows kept; 3: some set aside; 2: none kept."})
final class ImportCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Clock clock;

    @Mixin
    private SurveyArgument survey;

    @Parameters(index = "1", paramLabel = "FILE", converter = PathOption.class, description = "the file the meter exported")
    private Path file;

    @Option(names = "--map", paramLabel = "COLUMN=FIELD", converter = ColumnField.Option.class,
            description = "what a column holds, where its title does not say it; once for each such column")
    private List<ColumnField> map = List.of();

    @Option(names = "--cove", paramLabel = "ID", description = "the cove of rows that name none")
    private String cove;

    @Mixin
    private StationOptions stations;

    ImportCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        InputFile.check(file);
        ImportOptions options = options();
        Survey described = survey.read(terminal).survey().orElseThrow();
        Outcome<ReadingLog> log = ReadingLog.open(survey.folder(), Holder.here("covewalk import", clock), described.firstSetUp().id());
        if (log.refused()) {
            throw CannotBeDone.because(log.problems());
        }
        try (ReadingLog open = log.value().orElseThrow()) {
            tell(log.problems());
            ImportResult result = Progress.during(Sentences.of("importing"), terminal, () -> add(open, options));
            return tell(result);
        }
    }

    /** Reads the survey once more: until the log was locked, another program may have added to it. */
    private ImportResult add(ReadingLog open, ImportOptions options) throws Exception {
        ReadSurvey now = survey.read(terminal);
        HeaderTable names = HeaderTable.ofTheTradeAnd(survey.folder());
        return new MeterImport(now.survey().orElseThrow(), now.log(), open, names).add(file, options);
    }

    private ImportOptions options() throws IOException, CannotBeDone {
        Map<String, String> named = new LinkedHashMap<>();
        map.forEach(column -> named.put(column.column(), column.field()));
        return new ImportOptions(named, Optional.ofNullable(cove), Optional.empty(), stations.stations());
    }

    private int tell(ImportResult result) {
        tell(result.setAside());
        new Warnings(result.warnings()).print(terminal.err());
        tell(result.questions());
        tell(result.refusals());
        if (result.refused() && result.rows() == 0) {
            return ExitCode.NOT_DONE;
        }
        terminal.out().println(Sentences.of("imported", Integer.toString(result.rows()), Integer.toString(result.kept()),
                Integer.toString(result.alreadyThere()), Integer.toString(result.setAside().size())));
        return code(result);
    }

    private void tell(List<Problem> problems) {
        problems.forEach(problem -> terminal.err().println(problem.inFull(Locale.ROOT)));
    }

    private static int code(ImportResult result) {
        boolean none = result.kept() + result.alreadyThere() == 0;
        if (result.refused() || none) {
            return ExitCode.NOT_DONE;
        }
        return result.tookEverything() ? ExitCode.DONE : ExitCode.OPEN;
    }
}
