package covewalk.survey;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * When, by whom and why a site was walked.
 *
 * @param minutesOn minutes the light had been on before the first reading; empty where nobody knows
 * @param follows name of the earlier survey that this one follows, or empty
 */
public record Visit(Optional<LocalDate> date, String inspector, Optional<Purpose> purpose, OptionalInt minutesOn,
                    String follows) {
}
