package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Typed;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a list of positions: one on each line, in metres or with its unit (3.5, 3500 mm, 12' 6 1/2"). Lines that start
 * with # are remarks.
 */
public final class StationList {

    private StationList() {
    }

    /** The positions, or all lines that are none. */
    public static Outcome<Stations> read(Path file) throws IOException {
        String name = file.getFileName().toString();
        List<Typed> positions = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        String[] lines = FileText.readingsOf(Files.readAllBytes(file)).get(0).text().split("\r\n|\r|\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (!line.isEmpty() && !line.startsWith("#") && !(positions.isEmpty() && line.startsWith("position"))) {
                Optional<Typed> position = Length.metres(line, DecimalMark.UNKNOWN, MeterUnit.METRE);
                position.ifPresent(positions::add);
                if (position.isEmpty()) {
                    problems.add(Problem.refusal("import.no-length", MeterRow.excerpt(line)).at(name, i + 1, ""));
                }
            }
        }
        boolean sound = problems.isEmpty();
        return new Outcome<>(sound ? Optional.of(new Stations.Listed(name, positions)) : Optional.empty(), problems);
    }
}
