package covewalk.survey.file.description;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.Problem;
import covewalk.survey.Soundness;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.DurableFile;
import covewalk.survey.file.disk.FileNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A survey's description on disk, {@code survey.json}. */
public final class DescriptionFile {

    private final Path file;

    private DescriptionFile(Path file) {
        this.file = file;
    }

    public static DescriptionFile in(Path folder) {
        return new DescriptionFile(folder.resolve(FileNames.DESCRIPTION));
    }

    /**
     * What the file says.
     *
     * @param survey there as soon as every field could be taken, sound or not
     * @param root the fields as they stand in the file, also those that nobody here knows
     */
    public record Description(Optional<Survey> survey, Optional<ObjectNode> root, List<Problem> problems) {
    }

    public Description read() throws IOException {
        if (Files.isDirectory(file)) {
            return refused(Problem.refusal("json.is-folder"));
        }
        try {
            if (Files.size(file) > JsonTree.MOST_BYTES) {
                return refused(Problem.refusal("json.too-much"));
            }
            return read(JsonTree.read(Files.readAllBytes(file)));
        } catch (NoSuchFileException missing) {
            return refused(Problem.refusal("json.no-file"));
        }
    }

    private static Description refused(Problem why) {
        return new Description(Optional.empty(), Optional.empty(), List.of(why.at(FileNames.DESCRIPTION, 0, "")));
    }

    private static Description read(JsonTree.Read tree) {
        if (tree.root().isEmpty()) {
            return new Description(Optional.empty(), Optional.empty(), tree.problems());
        }
        List<Problem> wrong = new ArrayList<>();
        Fields fields = new Fields(tree.root().get(), "", wrong);
        Optional<Survey> survey = SurveyEntry.isOurs(fields) ? Optional.of(SurveyEntry.read(fields, tree.places()))
                : Optional.empty();
        boolean taken = wrong.isEmpty();
        if (survey.isPresent()) {
            fields.misspelt(wrong); // also where it is refused: a field that is missing may be there under another name
        }
        survey = survey.filter(read -> taken);
        List<Problem> placed = new ArrayList<>(wrong.stream().map(tree.places()::place).toList());
        survey.ifPresent(read -> Soundness.of(read).forEach(problem -> placed.add(tree.places().placeChecked(problem))));
        placed.sort(Comparator.comparingInt(Problem::line));
        return new Description(survey, tree.root(), placed);
    }

    /**
     * Puts the survey in place of what the file says, in one go; fields that nobody here knows stay. A file that says the same
     * already stays byte for byte, as it may be sealed. Refused where what is there cannot be read, since it would be lost.
     */
    public List<Problem> save(Survey survey) throws IOException {
        Description old = read();
        if (old.root().isEmpty() && Files.exists(file)) {
            return old.problems();
        }
        byte[] now = bytes(SurveyEntry.write(survey, old.root()));
        if (!Files.exists(file) || !saysTheSame(old, now)) {
            DurableFile.replace(file, now);
        }
        return List.of();
    }

    /** The survey that is there, where it says something else than one that was read or saved earlier; empty too where it cannot be read. */
    public Optional<Survey> otherThan(Survey known) throws IOException {
        Description now = read();
        return now.survey().isEmpty() || saysTheSame(now, bytes(SurveyEntry.write(known, now.root()))) ? Optional.empty() : now.survey();
    }

    /** A survey as it would be written in place of what is there. */
    public byte[] written(Survey survey) throws IOException {
        return bytes(SurveyEntry.write(survey, read().root()));
    }

    private static boolean saysTheSame(Description old, byte[] now) throws IOException {
        return old.survey().isPresent() && Arrays.equals(bytes(SurveyEntry.write(old.survey().get(), old.root())), now);
    }

    /** Two spaces, line feeds, one order: the same survey gives the same bytes on every system. */
    public static byte[] bytes(ObjectNode root) throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        return CsvText.bytes(new ObjectMapper().writer(printer).writeValueAsString(root) + "\n");
    }
}
