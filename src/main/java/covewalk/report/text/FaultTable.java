package covewalk.report.text;

import covewalk.verdict.Fault;
import covewalk.words.Numbers;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The faults of a cove that are no joint, a line each, in columns as wide as they need to be. */
final class FaultTable {

    private static final int LONGEST_REEL = 8;
    private static final Set<Integer> FIGURES = Set.of(0, 3, 4, 5);

    private final Words words;
    private final Numbers numbers;

    FaultTable(Words words) {
        this.words = words;
        this.numbers = words.numbers();
    }

    List<String> lines(List<Fault> faults) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("range", "kind", "reel", "steps", "uncertainty", "limit", "verdict", "confidence", "towards").stream()
                .map(column -> words.text("table.column." + column)).toList());
        faults.forEach(fault -> rows.add(row(fault)));
        return PlainText.columns(rows, FIGURES);
    }

    private List<String> row(Fault fault) {
        return List.of(words.text("table.range", numbers.fixed(fault.fromM(), 2), numbers.metres(fault.toM())),
                words.text("table.kind." + fault.kind().code()), Shortened.of(PlainText.calm(String.join(" | ", fault.reels())), LONGEST_REEL),
                numbers.steps(fault.difference().steps()), numbers.steps(fault.difference().standardUncertaintySteps()),
                numbers.plain(fault.limitSteps(), 2), words.verdict(fault.verdict()),
                numbers.confidence(fault.confidence().beyond()) + "/" + numbers.confidence(fault.confidence().within()),
                words.towards(fault.difference().towards()));
    }
}
