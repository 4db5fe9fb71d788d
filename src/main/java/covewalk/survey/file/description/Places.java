package covewalk.survey.file.description;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.FileNames;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where in {@code survey.json} a thing stands: the line of each path such as {@code coves[1].lengthM}. */
public final class Places {

    private static final Pattern PLACEMENT = Pattern.compile("(coves\\[\\d+]\\.placements\\[\\d+])(.*)");

    private final JsonLines lines;
    private final Map<String, String> inFile = new HashMap<>();

    Places(JsonLines lines) {
        this.lines = lines;
    }

    /** Notes that what is checked under one path stands in the file under another: placements are sorted when read. */
    void alias(String checked, String asInFile) {
        inFile.put(checked, asInFile);
    }

    /** The problem with file and line, by the path in its column; that of what it lies in, where it is missing itself. */
    public Problem place(Problem problem) {
        return problem.at(FileNames.DESCRIPTION, lines.of(problem.column()), problem.column());
    }

    /** As {@link #place}, for a problem found in the records. */
    Problem placeChecked(Problem problem) {
        Matcher placement = PLACEMENT.matcher(problem.column());
        if (!placement.matches()) {
            return place(problem);
        }
        String start = inFile.getOrDefault(placement.group(1), placement.group(1));
        return place(problem.inColumn(start + placement.group(2)));
    }
}
