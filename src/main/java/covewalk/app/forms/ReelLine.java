package covewalk.app.forms;

import covewalk.survey.LabelLine;
import covewalk.survey.Reel;
import covewalk.words.Words;
import java.util.List;
import java.util.stream.Collectors;

/** A reel in one line of a list: first what tells it from its neighbours, last what all of a delivery share. */
public final class ReelLine {

    private static final List<String> TELLING = List.of("serial", "lot", "bin", "nominalCct", "product", "maker");

    private final Words words;

    public ReelLine(Words words) {
        this.words = words;
    }

    public String of(Reel reel) {
        List<LabelLine> label = reel.label();
        String lines = TELLING.stream().flatMap(field -> label.stream().filter(line -> line.field().equals(field)))
                .map(line -> words.text("reel.field." + line.field()) + " " + line.text()).collect(Collectors.joining(", "));
        return words.text("reel.label", reel.id(), lines.isEmpty() ? words.text("reel.no-label") : lines);
    }
}
