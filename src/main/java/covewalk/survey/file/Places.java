package covewalk.survey.file;

import covewalk.survey.Problem;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where in {@code survey.json} a thing stands: the line of each path such as {@code coves[1].lengthM}. */
final class Places {

    private static final Pattern PLACEMENT = Pattern.compile("(coves\\[\\d+]\\.placements\\[\\d+])(.*)");

    private final Map<String, Integer> lines = new HashMap<>();
    private final Map<String, String> inFile = new HashMap<>();

    void add(String path, int line) {
        lines.put(path, line);
    }

    /** Notes that what is checked under one path stands in the file under another: placements are sorted when read. */
    void alias(String checked, String asInFile) {
        inFile.put(checked, asInFile);
    }

    /** The problem with file and line, by the path in its column; that of what it lies in, where it is missing itself. */
    Problem place(Problem problem) {
        return problem.at(FileNames.DESCRIPTION, line(problem.column()), problem.column());
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

    private int line(String path) {
        String at = path;
        while (!lines.containsKey(at) && !at.isEmpty()) {
            at = at.substring(0, Math.max(0, Math.max(at.lastIndexOf('.'), at.lastIndexOf('['))));
        }
        return lines.getOrDefault(at, 1);
    }
}
