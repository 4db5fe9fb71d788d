package covewalk.survey;

import java.util.List;
import java.util.stream.Stream;

/**
 * One line of a reel's label.
 *
 * @param field the field's name in a survey file, such as {@code lot}
 * @param text what is printed, never empty
 */
public record LabelLine(String field, String text) {

    static List<LabelLine> of(Reel reel) {
        return Stream.of(
                new LabelLine("maker", reel.maker()),
                new LabelLine("product", reel.product()),
                new LabelLine("nominalCct", reel.nominalCct().isPresent() ? reel.nominalCct().getAsInt() + " K" : ""),
                new LabelLine("bin", reel.bin()),
                new LabelLine("lot", reel.lot()),
                new LabelLine("serial", reel.serial()),
                new LabelLine("made", reel.made()),
                new LabelLine("gtin", reel.gtin()))
                .filter(line -> !line.text.isEmpty())
                .toList();
    }
}
