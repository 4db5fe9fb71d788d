package covewalk.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.file.seal.FileChange;
import covewalk.survey.file.seal.Verified;
import java.util.List;

/** What became of a sealed survey, for programs. */
public final class VerifiedJson {

    /**
     * As text.
     *
     * @param verified by the seal that was asked for, or by the last one
     * @param earlier by the seals before it
     */
    public String of(Verified verified, List<Verified> earlier) {
        ObjectNode all = one(verified);
        ArrayNode before = all.putArray("earlierSeals");
        earlier.forEach(seal -> before.add(one(seal)));
        return Json.text(all);
    }

    private static ObjectNode one(Verified verified) {
        ObjectNode object = Json.object().put("code", verified.code()).put("result", verified.result().code());
        ArrayNode files = object.putArray("files");
        verified.changes().forEach(change -> files.add(change(change)));
        return object;
    }

    private static ObjectNode change(FileChange change) {
        return Json.object().put("file", change.file()).put("change", change.kind().code()).put("rowsAdded", change.rows());
    }
}
