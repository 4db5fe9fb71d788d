package covewalk.survey.file;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** The survey that another one follows: a folder beside it, by its plain name. */
public final class EarlierSurvey {

    private static final String NO_PLAIN_NAME = ".*[/\\\\:\\p{Cntrl}].*|\\.{1,2}";

    private EarlierSurvey() {
    }

    /**
     * Where it lies. Only a folder next to {@code folder} is looked for, so that a description from elsewhere cannot make
     * anybody read other parts of a disk.
     *
     * @param name as {@code visit.follows} says it, not empty
     * @return refused where the name is no plain name, or no such folder is there
     */
    public static Outcome<Path> beside(Path folder, String name) throws IOException {
        if (name.isBlank() || name.matches("(?s)" + NO_PLAIN_NAME)) {
            return refused("survey.follows-name", name);
        }
        try {
            Path beside = folder.toRealPath().resolveSibling(name.strip());
            if (!Files.isDirectory(beside)) {
                return refused("survey.follows-missing", name);
            }
            return Files.isSameFile(beside, folder) ? refused("survey.follows-itself", name) : Outcome.of(beside);
        } catch (InvalidPathException noName) {
            return refused("survey.follows-name", name);
        }
    }

    private static Outcome<Path> refused(String key, String name) {
        return Outcome.refused(Problem.warning(key, CsvText.oneLine(name)).at(FileNames.DESCRIPTION, 0, "visit.follows"));
    }
}
