package covewalk.app.report;

import java.nio.file.Path;
import java.util.List;

/**
 * A report that was written, or begun.
 *
 * @param files in the order in which they were made; none where it was stopped before, or the folder refused them
 * @param seal the code beside the signature; empty where the survey could not be sealed
 * @param toKnow what did not go as it should, one sentence each
 */
record Issued(List<Path> files, String seal, List<String> toKnow) {

    Issued {
        files = List.copyOf(files);
        toKnow = List.copyOf(toKnow);
    }
}
