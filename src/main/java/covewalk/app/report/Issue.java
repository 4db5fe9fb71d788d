package covewalk.app.report;

import covewalk.app.open.DiskWork;
import covewalk.app.text.Texts;
import covewalk.report.Audit;
import covewalk.report.EarlierVisit;
import covewalk.report.PunchList;
import covewalk.report.Report;
import covewalk.survey.Problem;
import covewalk.survey.file.DiskWords;
import covewalk.survey.file.FolderLock;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.PunchLog;
import covewalk.survey.file.PunchStates;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.ReadingLog;
import covewalk.survey.file.Seal;
import covewalk.survey.file.SealRecord;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Seals a survey and writes its report, while nobody else writes in the folder. What goes wrong where the report is to go
 * is no matter of the survey's folder and is told as such.
 */
final class Issue implements DiskWork<Issue.Ended> {

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
     * @param issued empty where it was stopped, or could not be written
     * @param why it could not be written; empty where it was, or was stopped
     */
    record Ended(Optional<Issued> issued, String why) {
    }

    private static final Logger LOG = Logger.getLogger("covewalk.app");

    private final Path survey;
    private final Judgement judgement;
    private final boolean correctDrift;
    private final Choices choices;
    private final Texts texts;
    private final Consumer<Step> told;
    private final BooleanSupplier stopped;

    /**
     * @param judgement of what is on disk
     * @param correctDrift whether a drift was taken off in it
     * @param told of each step as it begins
     * @param stopped whether somebody wants it no more; asked before anything is sealed
     */
    Issue(Path survey, Judgement judgement, boolean correctDrift, Choices choices, Texts texts, Consumer<Step> told,
          BooleanSupplier stopped) {
        this.survey = survey;
        this.judgement = judgement;
        this.correctDrift = correctDrift;
        this.choices = choices;
        this.texts = texts;
        this.told = told;
        this.stopped = stopped;
    }

    @Override
    public Ended with(ReadingLog log) throws IOException {
        told.accept(Step.READING);
        Optional<String> noFolder = noFolder();
        if (noFolder.isPresent()) {
            return new Ended(Optional.empty(), noFolder.get());
        }
        ReadSurvey read = SurveyFolder.at(survey).read();
        if (stopped.getAsBoolean()) {
            return new Ended(Optional.empty(), "");
        }
        told.accept(Step.SEALING);
        List<String> toKnow = new ArrayList<>();
        Optional<PunchList> list = numbered(log.lock(), toKnow);
        String seal = list.isEmpty() ? "" : seal(log.lock(), toKnow);
        told.accept(Step.WRITING);
        return write(list.orElseGet(() -> PunchList.of(judgement)), read, seal, toKnow);
    }

    /** Before the survey is sealed: a seal is for a report that was issued. */
    private Optional<String> noFolder() {
        Path folder = choices.folder();
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return Optional.of(texts.get("folder.is-file", String.valueOf(folder.getFileName())));
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException refused) {
            return Optional.of(texts.get("folder.refused", DiskWords.reason(refused)));
        }
        return Files.isWritable(folder) ? Optional.empty() : Optional.of(texts.get("folder.denied"));
    }

    /** With its numbers fixed in the survey's log, before that is sealed; empty where the log cannot be read or written. */
    private Optional<PunchList> numbered(FolderLock lock, List<String> toKnow) {
        List<Problem> problems = new ArrayList<>();
        try {
            Outcome<PunchLog> opened = PunchLog.open(lock);
            problems.addAll(opened.problems());
            if (opened.refused()) {
                return Optional.empty();
            }
            try (PunchLog punch = opened.value().orElseThrow()) {
                PunchStates recorded = PunchLog.read(survey).value().orElse(PunchStates.NONE);
                Optional<EarlierVisit> before = EarlierVisit.of(survey, judgement.survey(), correctDrift, problems);
                PunchList list = PunchList.of(judgement, recorded, before);
                return Optional.of(list.registered(punch.append(list.registrations())));
            }
        } catch (IOException failed) {
            toKnow.add(texts.get("not-sealed.failed", DiskWords.reason(failed)));
            return Optional.empty();
        } finally {
            problems.forEach(problem -> toKnow.add(problem.inFull(texts.locale())));
        }
    }

    private String seal(FolderLock lock, List<String> toKnow) {
        try {
            Outcome<String> seal = Seal.issue(lock);
            seal.problems().forEach(problem -> toKnow.add(problem.inFull(texts.locale())));
            if (seal.refused()) {
                toKnow.add(texts.get("not-sealed.unreadable"));
            }
            return seal.value().orElse("");
        } catch (IOException failed) {
            toKnow.add(texts.get("not-sealed.failed", DiskWords.reason(failed)));
            return "";
        }
    }

    private Ended write(PunchList list, ReadSurvey read, String seal, List<String> toKnow) {
        try {
            Report.Written written = new Report(choices.language().words(), choices.style())
                    .write(new Audit(list, read.log(), read.warnings(), sealed(seal)), choices.folder());
            written.noPdf().ifPresent(why -> toKnow.add(texts.get("no-pdf", reason(why))));
            return new Ended(Optional.of(new Issued(written.files(), seal, toKnow)), "");
        } catch (IOException failed) {
            return new Ended(Optional.empty(), texts.get("folder.failed", DiskWords.reason(failed)));
        }
    }

    /** Nothing where the survey could not be sealed, or was written to meanwhile. */
    private Optional<SealRecord> sealed(String code) throws IOException {
        return code.isEmpty() ? Optional.empty() : Optional.of(SealRecord.of(survey)).filter(seal -> seal.code().equals(code));
    }

    private String reason(Throwable why) {
        LOG.log(Level.FINE, "no PDF", why);
        return why instanceof IOException disk ? DiskWords.reason(disk)
                : texts.get(why instanceof OutOfMemoryError ? "no-pdf.memory" : "no-pdf.fault");
    }
}
