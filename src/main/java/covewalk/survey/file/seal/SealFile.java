package covewalk.survey.file.seal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.Problem;
import covewalk.survey.file.description.DescriptionFile;
import covewalk.survey.file.description.Fields;
import covewalk.survey.file.description.JsonTree;
import covewalk.survey.file.description.Range;
import covewalk.survey.file.disk.DurableFile;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The seals of a survey on disk, {@code seal.json}: oldest first, only ever added to. */
public final class SealFile {

    private static final String FORMAT = "covewalk-seal/1";
    private static final Range LENGTH = Range.from(0, 1L << 53);

    private final Path file;

    public SealFile(Path folder) {
        this.file = folder.resolve(FileNames.SEAL);
    }

    /** The seals; empty where none was issued. Refused where the file is damaged or of another format. */
    Outcome<List<SealEntry>> read() throws IOException {
        if (Files.isDirectory(file)) {
            return Outcome.refused(Problem.refusal("json.is-folder").at(FileNames.SEAL, 0, ""));
        }
        try {
            JsonTree.Read tree = JsonTree.read(Files.readAllBytes(file));
            return tree.root().isEmpty() ? Outcome.refused(named(tree.problems())) : read(tree);
        } catch (NoSuchFileException noneYet) {
            return Outcome.of(List.of());
        }
    }

    /** Whether a seal on disk holds a file of this name; not where the seals cannot be read. */
    public boolean names(String name) throws IOException {
        return read().value().orElse(List.of()).stream()
                .anyMatch(seal -> seal.files().stream().anyMatch(sealed -> sealed.name().equals(name)));
    }

    private static Outcome<List<SealEntry>> read(JsonTree.Read tree) {
        List<Problem> wrong = new ArrayList<>();
        Fields fields = new Fields(tree.root().orElseThrow(), "", wrong);
        String format = fields.neededText("format");
        if (!format.isEmpty() && !format.equals(FORMAT)) {
            fields.add("format", Problem.refusal("json.format", format, FORMAT));
        }
        List<SealEntry> seals = new ArrayList<>();
        for (Fields seal : fields.objects("seals")) {
            SealEntry entry = new SealEntry(seal.objects("files").stream().map(SealFile::file).toList());
            if (!seal.neededText("code").equals(entry.code())) {
                seal.add("code", Problem.refusal("seal.code", seal.text("code")));
            }
            seals.add(entry);
        }
        return wrong.isEmpty() ? Outcome.of(seals)
                : Outcome.refused(named(wrong.stream().map(tree.places()::place).toList()));
    }

    private static SealedFile file(Fields fields) {
        return new SealedFile(fields.neededText("name"), (long) fields.neededNumber("length", LENGTH, 0),
                fields.neededText("sha256"));
    }

    private static List<Problem> named(List<Problem> problems) {
        return problems.stream().map(problem -> problem.at(FileNames.SEAL, problem.line(), problem.column())).toList();
    }

    void write(List<SealEntry> seals) throws IOException {
        ObjectNode root = JsonNodeFactory.instance.objectNode().put("format", FORMAT);
        ArrayNode list = root.putArray("seals");
        for (SealEntry seal : seals) {
            ArrayNode files = list.addObject().put("code", seal.code()).putArray("files");
            seal.files().forEach(sealed -> files.addObject().put("name", sealed.name()).put("length", sealed.length())
                    .put("sha256", sealed.sha256()));
        }
        DurableFile.replace(file, DescriptionFile.bytes(root));
    }
}
