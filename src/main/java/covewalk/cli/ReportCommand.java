package covewalk.cli;

import covewalk.report.Audit;
import covewalk.report.Report;
import covewalk.report.SideReport;
import covewalk.survey.file.FolderLock;
import covewalk.survey.file.Holder;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SealRecord;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code covewalk report SURVEY --out DIR}. */
@Command(name = "report", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Writes the punch list of a survey.",
        description = "Writes the punch list with its evidence: a PDF, a page for the browser, a table and a JSON file. Seals the survey, so"
                + " that everybody can see later whether it was changed.",
        footer = {"", "The last line counts beyond, unsettled, within and not read. Exit code 0: all within; 1: something beyond;"
                + " 2: could not be done; 3: nothing beyond, something unsettled or not read."})
final class ReportCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Clock clock;

    @Mixin
    private SurveyArgument survey;

    @Option(names = "--out", required = true, paramLabel = "DIR", converter = PathOption.class,
            description = "the folder to write into; it is made where it is missing")
    private Path out;

    @Mixin
    private ReaderOptions readers;

    @Mixin
    private PageOptions pages;

    @Mixin
    private CorrectDriftOption correctDrift;

    @Mixin
    private LanguageOption language;

    ReportCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        Outcome<FolderLock> lock = survey.lock(Holder.here("covewalk report", clock));
        try (FolderLock held = lock.value().orElse(null)) {
            ReadSurvey read = survey.read(terminal, language.words().locale());
            Judged judged = Judged.of(read, Optional.empty(), correctDrift.asked(), language.words(), terminal);
            readers.check(judged.judgement().survey());
            makeOut();
            NumberedList numbered = number(judged.judgement(), Optional.ofNullable(held));
            lock.problems().forEach(why -> terminal.err().println(Sentences.of("report.not-fixed", why.sentence(Locale.ROOT))));
            String seal = held == null || numbered.failed() ? "" : new Sealing(terminal).seal(held);
            Warnings warnings = judged.warnings().and(numbered.toKnow());
            Audit audit = new Audit(numbered.list(), read.log(), warnings.all(), sealed(seal));
            List<Report.Written> written = write(audit);
            warnings.print(terminal.err());
            tell(written, seal);
            terminal.out().println(language.words().counts(judged.judgement()));
            return ExitCode.of(judged.judgement());
        }
    }

    private NumberedList number(Judgement judgement, Optional<FolderLock> lock) throws IOException, CannotBeDone {
        NumberedList asRead = NumberedList.of(judgement, survey.folder(), correctDrift.asked());
        return lock.isEmpty() ? asRead : asRead.registered(lock.get(), terminal);
    }

    private void tell(List<Report.Written> written, String seal) {
        written.stream().flatMap(one -> one.noPdf().stream()).limit(1)
                .forEach(why -> terminal.err().println(Sentences.of("report.no-pdf", reason(why))));
        written.stream().flatMap(one -> one.files().stream()).forEach(file -> terminal.out().println(Sentences.of("report.written", out.resolve(file.getFileName()).toString())));
        if (!seal.isEmpty()) {
            terminal.out().println(Sentences.of("report.sealed", seal));
        }
    }

    /** Before the survey is sealed: a seal is for a report that was issued. */
    private void makeOut() throws IOException, CannotBeDone {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw CannotBeDone.because(Sentences.of("report.out-is-file", out.getFileName().toString()));
        }
        try {
            Files.createDirectories(out);
        } catch (FileSystemException refused) {
            throw CannotBeDone.because(Sentences.of("report.out-refused", String.valueOf(out.getFileName())));
        }
        if (!Files.isWritable(out)) {
            throw CannotBeDone.because(Sentences.of("report.out-denied", String.valueOf(out.getFileName())));
        }
    }

    /** Nothing where the survey could not be sealed. */
    private Optional<SealRecord> sealed(String code) throws IOException {
        return code.isEmpty() ? Optional.empty() : Optional.of(SealRecord.of(survey.folder())).filter(seal -> seal.code().equals(code));
    }

    private static String reason(Throwable why) {
        if (why instanceof IOException disk) {
            return FailureWords.reason(disk);
        }
        System.getLogger("covewalk").log(System.Logger.Level.DEBUG, "no PDF", why);
        return Sentences.of(why instanceof OutOfMemoryError ? "report.no-pdf.memory" : "report.no-pdf.fault");
    }

    private List<Report.Written> write(Audit audit) throws Exception {
        return Progress.during(Sentences.of("writing"), terminal, () -> {
            List<Report.Written> written = new ArrayList<>();
            written.add(new Report(language.words(), pages.style()).write(audit, out));
            readers.write(audit, survey.folder(), new SideReport(language.words(), pages.style()), out).ifPresent(written::add);
            return written;
        });
    }
}
