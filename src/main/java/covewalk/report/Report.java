package covewalk.report;

import covewalk.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a report: the punch list as a page to print, as a table and as data. */
public final class Report {

    private final Words words;

    public Report(Words words) {
        this.words = words;
    }

    /**
     * Writes the files of the report. All are made before any is written, and each replaces an earlier one as a whole.
     *
     * @param warnings on the survey, in words, one sentence each
     * @param sealCode the code to print beside a signature; empty where the survey is not sealed
     * @param outDir the folder to write to; made where it is missing
     * @return the files written
     */
    public List<Path> write(PunchList list, List<String> warnings, String sealCode, Path outDir) throws IOException {
        Files.createDirectories(outDir);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, String> file : files(list, warnings, sealCode).entrySet()) {
            written.add(replace(outDir.resolve(file.getKey()), file.getValue()));
        }
        return written;
    }

    /** The report's files by name, without writing them. */
    Map<String, String> files(PunchList list, List<String> warnings, String sealCode) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("punch-list.html", new PunchHtml(words).of(list, warnings, sealCode));
        files.put("punch-list.csv", new PunchCsv(words).of(list));
        files.put("punch-list.json", new PunchJson(words).of(list, warnings, sealCode));
        return files;
    }

    private static Path replace(Path file, String text) throws IOException {
        Path half = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            Files.write(half, text.getBytes(StandardCharsets.UTF_8));
            return Files.move(half, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(half);
        }
    }
}
