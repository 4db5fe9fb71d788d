package covewalk.survey.label;

import java.util.Optional;

/**
 * What came into a box where a label is asked for, from a scanner or from somebody's fingers.
 *
 * @param text as it came, without a scanner's prefix
 * @param code what it says where it is a code of GS1; empty for any other text
 */
public record Scanned(String text, Optional<LabelCode> code) {

    /** Longer than any code that a label has room for. */
    private static final int LONGEST = 4000;

    public static Scanned of(String typed) {
        Symbology symbology = Symbology.of(typed.strip());
        String text = symbology.content();
        if (text.length() > LONGEST) {
            return new Scanned(text, Optional.empty());
        }
        return new Scanned(Separator.out(text), symbology.isGs1() ? ElementString.read(text, false)
                : DigitalLink.read(text).or(() -> ElementString.read(text, true)));
    }
}
