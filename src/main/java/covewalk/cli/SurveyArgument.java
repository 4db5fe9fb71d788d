package covewalk.cli;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The survey that a command works on. */
final class SurveyArgument {

    @Parameters(index = "0", paramLabel = "SURVEY", converter = PathOption.class, description = "the survey's folder")
    private Path folder;

    Path folder() {
        return folder;
    }

    /** Takes the lock of the folder, or says who has it; in a folder without a survey nothing is made. */
    Outcome<FolderLock> lock(Holder holder) {
        return SurveyFolder.isOccupied(folder) ? FolderLock.take(folder, holder) : new Outcome<>(Optional.empty(), List.of());
    }

    /** The survey with its readings; where something in it cannot be, all that is wrong with it is told. */
    ReadSurvey read(Terminal terminal) throws Exception {
        return read(terminal, Locale.ROOT);
    }

    /** @param language of the sentences that say what is wrong */
    ReadSurvey read(Terminal terminal, Locale language) throws Exception {
        if (Files.isRegularFile(folder)) {
            throw CannotBeDone.because(Sentences.of("survey.is-file", folder.getFileName().toString()));
        }
        ReadSurvey survey = Progress.during(Sentences.of("reading-survey"), terminal, () -> SurveyFolder.at(folder).read());
        if (survey.refused()) {
            List<Problem> refusals = survey.problems().stream().filter(Problem::refused).toList();
            throw CannotBeDone.because(refusals, language);
        }
        return survey;
    }
}
