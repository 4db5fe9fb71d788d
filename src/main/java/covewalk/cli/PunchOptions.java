package covewalk.cli;

import covewalk.survey.Problem;
import covewalk.survey.file.punch.PunchChange;
import covewalk.survey.file.punch.PunchColumn;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What is to be recorded of items. */
final class PunchOptions {

    private final Map<PunchColumn, String> given = new EnumMap<>(PunchColumn.class);

    @Option(names = "--clause", paramLabel = "TEXT", description = "the clause or drawing it goes against")
    private void clause(String text) {
        given.put(PunchColumn.CLAUSE, text);
    }

    @Option(names = "--responsible", paramLabel = "WHO", description = "who puts it right")
    private void responsible(String text) {
        given.put(PunchColumn.RESPONSIBLE, text);
    }

    @Option(names = "--due", paramLabel = "DATE", description = "by when, like 2026-12-01")
    private void due(String text) {
        given.put(PunchColumn.DUE, text);
    }

    @Option(names = "--done", paramLabel = "DATE", description = "when it was put right; initials may follow")
    private void done(String text) {
        given.put(PunchColumn.DONE, text);
    }

    @Option(names = "--reinspected", paramLabel = "DATE", description = "when it was looked at or read again; initials may follow")
    private void reinspected(String text) {
        given.put(PunchColumn.REINSPECTED, text);
    }

    @Option(names = "--accepted", paramLabel = "DATE", description = "when it was accepted, and by whom: \"2026-12-02 AB\"")
    private void accepted(String text) {
        given.put(PunchColumn.ACCEPTED, text);
    }

    @Option(names = "--note", paramLabel = "TEXT", description = "anything else; each note takes the place of the one before")
    private void note(String text) {
        given.put(PunchColumn.NOTE, text);
    }

    boolean none() {
        return given.isEmpty();
    }

    /** The first option given, as it is written. */
    String first() {
        return "--" + given.keySet().iterator().next().code();
    }

    /** Refuses what cannot stand in the log, in the language asked for. */
    void check(Locale language) throws CannotBeDone {
        for (Map.Entry<PunchColumn, String> cell : given.entrySet()) {
            String option = "--" + cell.getKey().code();
            if (cell.getValue().isBlank()) {
                throw CannotBeDone.because(Sentences.of("punch.empty", option));
            }
            Optional<Problem> wrong = cell.getKey().check(cell.getValue().strip());
            if (wrong.isPresent()) {
                throw CannotBeDone.because(option + ": " + wrong.get().sentence(language));
            }
        }
    }

    /** As a row for an item; of what {@link #check} let pass. */
    PunchChange of(int item) {
        PunchChange change = PunchChange.of(item);
        for (Map.Entry<PunchColumn, String> cell : given.entrySet()) {
            change = change.with(cell.getKey(), cell.getValue().strip());
        }
        return change;
    }
}
