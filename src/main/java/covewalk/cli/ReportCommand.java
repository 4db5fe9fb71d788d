package covewalk.cli;

import covewalk.report.Audit;
import covewalk.report.Report;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SealRecord;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    @Mixin
    private SurveyArgument survey;

    @Option(names = "--out", required = true, paramLabel = "DIR", converter = PathOption.class,
            description = "the folder to write into; it is made where it is missing")
    private Path out;

    @Mixin
    private PageOptions pages;

    @Mixin
    private CorrectDriftOption correctDrift;

    @Mixin
    private LanguageOption language;

    ReportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        ReadSurvey read = survey.read(terminal, language.words().locale());
        Judged judged = Judged.of(read, Optional.empty(), correctDrift.asked(), language.words(), terminal);
        makeOut();
        String seal = new Sealing(terminal).seal(survey.folder());
        Report.Written written = write(new Audit(judged.judgement(), read.log(), read.warnings(), sealed(seal)));
        judged.warnings().print(terminal.err());
        written.noPdf().ifPresent(why -> terminal.err().println(Sentences.of("report.no-pdf", reason(why))));
        written.files().forEach(file -> terminal.out().println(Sentences.of("report.written", out.resolve(file.getFileName()).toString())));
        if (!seal.isEmpty()) {
            terminal.out().println(Sentences.of("report.sealed", seal));
        }
        terminal.out().println(language.words().counts(judged.judgement()));
        return ExitCode.of(judged.judgement());
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

    /** Nothing where the survey could not be sealed, or was written to meanwhile. */
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

    private Report.Written write(Audit audit) throws Exception {
        return Progress.during(Sentences.of("writing"), terminal, () -> new Report(language.words(), pages.style()).write(audit, out));
    }
}
