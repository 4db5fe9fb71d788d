package covewalk.app.report;

import covewalk.app.open.DiskWork;
import covewalk.app.text.Texts;
import covewalk.report.Edition;
import covewalk.report.Issue;
import covewalk.report.OutFolder;
import covewalk.report.Report;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.log.ReadingLog;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Seals a survey and writes its report, while nobody else writes in the folder. What goes wrong where the report is to go
 * is no matter of the survey's folder and is told as such.
 */
final class Issuing implements DiskWork<Issuing.Ended> {

    /** How far it is. */
    enum Step {
        READING, SEALING, WRITING;

        /** The word in texts. */
        String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * What came of it.
     *
     * @param says why there is no report, or less of it than was asked for; empty where all was written
     * @param issued empty where nothing was sealed or written
     */
    record Ended(String says, Optional<Issued> issued) {
    }

    private final Path survey;
    private final Judgement judgement;
    private final List<Reading> judged;
    private final boolean correctDrift;
    private final Choices choices;
    private final Texts texts;
    private final Consumer<Step> told;
    private final BooleanSupplier stopped;

    /**
     * @param judgement of what was on disk when it was made
     * @param judged the log that it was made from
     * @param correctDrift whether a drift was taken off in it
     * @param told of each step as it begins
     * @param stopped whether somebody wants it no more; asked before anything is sealed, and before each file
     */
    Issuing(Path survey, Judgement judgement, List<Reading> judged, boolean correctDrift, Choices choices, Texts texts,
            Consumer<Step> told, BooleanSupplier stopped) {
        this.survey = survey;
        this.judgement = judgement;
        this.judged = List.copyOf(judged);
        this.correctDrift = correctDrift;
        this.choices = choices;
        this.texts = texts;
        this.told = told;
        this.stopped = stopped;
    }

    @Override
    public Ended with(ReadingLog log) throws IOException {
        told.accept(Step.READING);
        Optional<OutFolder> noFolder = OutFolder.make(choices.folder());
        if (noFolder.isPresent()) {
            return nothing(texts.get(switch (noFolder.get()) {
                case IS_FILE -> "folder.is-file";
                case CANNOT_BE_MADE -> "folder.refused";
                case NOT_WRITABLE -> "folder.denied";
            }, String.valueOf(choices.folder().getFileName())));
        }
        ReadSurvey read = SurveyFolder.at(survey).read();
        if (read.refused()) { // it was damaged or went away since it was judged
            return nothing(read.problems().stream().filter(Problem::refused).map(this::inFull).distinct().collect(Collectors.joining(" ")));
        }
        if (!wasJudged(read, log)) {
            return nothing(inFull(Problem.refusal("folder.changed-meanwhile")));
        }
        if (stopped.getAsBoolean()) {
            return nothing(texts.get("stopped"));
        }
        told.accept(Step.SEALING);
        Outcome<Issue> issue = Issue.under(log.lock(), judgement, correctDrift);
        if (issue.refused()) {
            return nothing(issue.problems().stream().map(this::inFull).collect(Collectors.joining(" ")));
        }
        told.accept(Step.WRITING);
        return write(issue.value().orElseThrow(), read);
    }

    /** An editor asks for no lock: a seal is not to stand below a judgement of something else. */
    private boolean wasJudged(ReadSurvey read, ReadingLog log) throws IOException {
        List<Reading> now = read.log();
        return SurveyFolder.at(survey).otherThan(judgement.survey()).isEmpty() && now.size() == judged.size()
                && IntStream.range(0, now.size()).allMatch(i -> log.alike(now.get(i), judged.get(i)));
    }

    private static Ended nothing(String why) {
        return new Ended(why, Optional.empty());
    }

    private Ended write(Issue issue, ReadSurvey read) {
        List<Report.Written> written = new ArrayList<>();
        try {
            new Edition(choices.language().words(), choices.style(), choices.readers())
                    .write(issue.audit(read.log(), read.warnings()), survey, choices.folder(), stopped, written::add);
            return new Ended(stopped(issue, written.size()), Optional.of(issued(issue, written)));
        } catch (IOException failed) {
            return new Ended(OutFolder.notWritten(failed).sentence(texts.locale()), Optional.of(issued(issue, written)));
        }
    }

    private Issued issued(Issue issue, List<Report.Written> written) {
        Stream<Problem> noPdf = written.stream().flatMap(one -> one.noPdf().stream());
        return new Issued(written.stream().flatMap(one -> one.files().stream()).toList(), issue.code(),
                Stream.concat(issue.whyUnsealed().stream(), noPdf).map(this::inFull).distinct().toList());
    }

    /** What a stop left undone; empty where it came too late for that, or not at all. */
    private String stopped(Issue issue, int written) {
        if (written == choices.readers().parts()) {
            return "";
        }
        return texts.get(written > 0 ? "stopped.partly" : issue.seal().isPresent() ? "stopped.sealed" : "stopped.unsealed");
    }

    private String inFull(Problem problem) {
        return problem.inFull(texts.locale());
    }
}
