package covewalk.cli;

import covewalk.report.punch.Audit;
import covewalk.report.Edition;
import covewalk.report.Issue;
import covewalk.report.OutFolder;
import covewalk.report.Readership;
import covewalk.report.Report;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
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
            Readership asked = readers.of(judged.judgement().survey());
            makeOut();
            Issue issue = issue(judged.judgement(), held, lock.problems());
            Warnings warnings = judged.warnings().and(issue.numbered().toKnow());
            List<Report.Written> written = write(issue.audit(read.log(), judged.warnings().all()), asked);
            warnings.print(terminal.err());
            tell(written, issue.code());
            terminal.out().println(language.words().counts(judged.judgement()));
            return ExitCode.of(judged.judgement());
        }
    }

    private Issue issue(Judgement judgement, FolderLock held, List<Problem> whyNoLock) throws IOException, CannotBeDone {
        Outcome<Issue> issued = held == null ? Issue.without(whyNoLock, survey.folder(), judgement, correctDrift.asked())
                : Issue.under(held, judgement, correctDrift.asked());
        if (issued.refused()) {
            throw CannotBeDone.because(issued.problems(), language.words().locale());
        }
        Issue issue = issued.value().orElseThrow();
        issue.whyUnsealed().forEach(this::warn);
        return issue;
    }

    private List<Report.Written> write(Audit audit, Readership asked) throws Exception {
        Edition edition = new Edition(language.words(), pages.style(), asked);
        return Progress.during(Sentences.of("writing"), terminal, () -> {
            List<Report.Written> written = new ArrayList<>();
            edition.write(audit, survey.folder(), out, () -> false, written::add);
            return written;
        });
    }

    private void tell(List<Report.Written> written, String seal) {
        written.stream().flatMap(one -> one.noPdf().stream()).limit(1).forEach(this::warn);
        written.stream().flatMap(one -> one.files().stream())
                .forEach(file -> terminal.out().println(Sentences.of("report.written", out.resolve(file.getFileName()).toString())));
        if (!seal.isEmpty()) {
            terminal.out().println(Sentences.of("report.sealed", seal));
        }
    }

    private void warn(Problem toKnow) {
        terminal.err().println(toKnow.inFull(language.words().locale()));
    }

    private void makeOut() throws CannotBeDone {
        Optional<OutFolder> trouble = OutFolder.make(out);
        if (trouble.isPresent()) {
            throw CannotBeDone.because(Sentences.of(switch (trouble.get()) {
                case IS_FILE -> "report.out-is-file";
                case CANNOT_BE_MADE -> "report.out-refused";
                case NOT_WRITABLE -> "report.out-denied";
            }, String.valueOf(out.getFileName())));
        }
    }
}
