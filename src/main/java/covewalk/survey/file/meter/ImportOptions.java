package covewalk.survey.file.meter;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the user says of a file.
 *
 * @param named fields by the title of a column, or by its number from 1: {@code --map column=field}
 * @param cove the id of the cove that rows belong to which name none
 * @param setUp the id of the set-up they were taken with; empty is the survey's first
 * @param stations where the rows were taken, for a file without positions
 */
public record ImportOptions(Map<String, String> named, Optional<String> cove, Optional<String> setUp, Stations stations) {

    public ImportOptions {
        named = Map.copyOf(named);
        Objects.requireNonNull(cove, "cove");
        Objects.requireNonNull(setUp, "setUp");
        Objects.requireNonNull(stations, "stations");
    }
}
