package covewalk.survey.file.seal;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Seals what a report was made from: {@code seal.json} lists, for every report issued, each file of the survey with its
 * SHA-256. Whoever has the code printed beside a signature can tell later whether the folder is still that one.
 */
public final class Seal {

    private Seal() {
    }

    /**
     * Seals the survey as it is now. Where the last seal says the same, nothing is added and the file keeps its bytes.
     *
     * @param lock held on the survey's folder: a log that somebody writes to meanwhile is not sealed
     * @return the code to be printed beside a signature; refused where the seals that are there cannot be read
     */
    public static Outcome<String> issue(FolderLock lock) throws IOException {
        if (!lock.isHeld()) {
            throw new IllegalStateException("the folder's lock has been given back");
        }
        return issue(lock.folder());
    }

    static Outcome<String> issue(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return Outcome.refused(Problem.refusal("folder.missing"));
        }
        SealFile file = new SealFile(folder);
        Outcome<List<SealEntry>> before = file.read();
        if (before.refused()) {
            return Outcome.refused(before.problems());
        }
        List<SealEntry> seals = new ArrayList<>(before.value().orElseThrow());
        SealEntry now = SealedFiles.in(folder);
        if (seals.isEmpty() || !seals.get(seals.size() - 1).equals(now)) {
            seals.add(now);
            file.write(seals);
        }
        return Outcome.of(now.code());
    }
}
