package covewalk.words;

import covewalk.survey.LabelLine;
import covewalk.survey.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Labels of reels in words. */
public final class ReelWords {

    /** The fields of a label, in its order; the names are those of {@link Reel#label()}. */
    private static final List<String> FIELDS =
            List.of("maker", "product", "nominalCct", "bin", "lot", "serial", "made", "gtin");

    /** Every reel has its own, so that a difference says nothing. */
    private static final String OWN = "serial";

    private final Words words;

    public ReelWords(Words words) {
        this.words = words;
    }

    /** The whole label in one line, as in "R1: product Linea 24, bin B3, lot 4471"; says so where nothing is noted. */
    public String label(Reel reel) {
        String lines = reel.label().stream().map(line -> field(line.field()) + " " + line.text())
                .collect(Collectors.joining(", "));
        return words.text("reel.label", reel.id(), lines.isEmpty() ? words.text("reel.no-label") : lines);
    }

    /** Both labels line by line, without the lines that neither has. */
    public List<LabelRow> sideBySide(Reel before, Reel after) {
        List<LabelRow> rows = new ArrayList<>();
        for (String field : FIELDS) {
            String first = text(before, field);
            String second = text(after, field);
            if (!first.isEmpty() || !second.isEmpty()) {
                boolean differs = !field.equals(OWN) && !first.isEmpty() && !second.isEmpty() && !first.equals(second);
                rows.add(new LabelRow(field(field), noted(first), noted(second), differs));
            }
        }
        return rows;
    }

    private static String text(Reel reel, String field) {
        return reel.label().stream().filter(line -> line.field().equals(field)).map(LabelLine::text).findFirst().orElse("");
    }

    private String field(String name) {
        return words.text("reel.field." + name);
    }

    private String noted(String text) {
        return text.isEmpty() ? words.text("reel.not-noted") : text;
    }
}
