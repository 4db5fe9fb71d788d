package covewalk.demo;

import covewalk.report.punch.PunchList;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.punch.PunchLog;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.seal.Seal;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Writes the demonstration survey's readings anew and numbers its items, and seals it once. Its {@code survey.json} is written by hand. */
final class MakeDemo {

    /** The survey's folder, from the project's top. */
    static final Path FOLDER = Path.of("survey-demo", "reading-rooms");

    static final Path LOG = FOLDER.resolve("readings.csv");

    static final Path PUNCH = FOLDER.resolve("punch.csv");

    static final Path SEALS = FOLDER.resolve("seal.json");

    /** The date of the walk. Another one gives other noise, and perhaps another verdict at the limit. */
    static final long SEED = 20261012;

    private MakeDemo() {
    }

    public static void main(String[] args) throws IOException {
        Files.writeString(LOG, log(SEED));
        Files.deleteIfExists(SEALS);
        Files.deleteIfExists(PUNCH);
        register(FOLDER);
    }

    /** Numbers the items of the punch list for good, and seals, as a first report does. */
    static void register(Path folder) throws IOException {
        Holder holder = new Holder("the demonstration's maker", "nobody", "nowhere", "2026-10-12 22:00");
        ReadSurvey read = SurveyFolder.at(folder).read();
        try (FolderLock lock = FolderLock.take(folder, holder).value().orElseThrow();
                PunchLog log = PunchLog.open(lock).value().orElseThrow()) {
            Judgement judgement = new Judge().judge(read.survey().orElseThrow(), read.log());
            log.append(PunchList.of(judgement, log.states(), Optional.empty()).registrations());
            Seal.issue(lock).value().orElseThrow();
        }
    }

    static String log(long seed) {
        return new EveningWalk(seed).log(Leg.all());
    }
}
