package covewalk.report;

import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Writes a report: the punch list as a page to print, as a table and as data. */
public final class Report {

    private final Words words;

    public Report(Words words) {
        this.words = words;
    }

    /**
     * Writes the files of the report; each is there as a whole or not at all, and replaces an earlier one.
     *
     * @param warnings on the survey, in words, one sentence each
     * @param sealCode the code to print beside a signature; empty where the survey is not sealed
     * @param outDir the folder to write to; made where it is missing
     * @return the files written
     */
    public List<Path> write(Judgement judgement, List<String> warnings, String sealCode, Path outDir) throws IOException {
        return List.of();
    }
}
