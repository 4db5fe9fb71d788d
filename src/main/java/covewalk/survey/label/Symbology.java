package covewalk.survey.label;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The mark that many scanners put before what they read, to say which kind of code it was (ISO/IEC 15424; those of GS1
 * from the GS1 General Specifications).
 *
 * @param prefix such as {@code ]d2}, or empty
 * @param content what was read
 */
record Symbology(String prefix, String content) {

    /** GS1-128, DataBar and composites, DataMatrix, QR and DotCode with the mark of GS1. */
    private static final Set<String> OF_GS1 = Set.of("]C1", "]e0", "]d2", "]Q3", "]J1");
    /** EAN-13 and UPC: nothing but a GTIN. */
    private static final Set<String> EAN = Set.of("]E0", "]E4");
    private static final Pattern PREFIXED = Pattern.compile("(?s)(\\][A-Za-z][0-9A-Za-z])(.+)");

    static Symbology of(String text) {
        Matcher prefixed = PREFIXED.matcher(text);
        if (!prefixed.matches()) {
            return new Symbology("", text);
        }
        String prefix = prefixed.group(1);
        String content = prefixed.group(2);
        if (EAN.contains(prefix) && Gtin.of(content).isPresent()) {
            return new Symbology("]C1", "01" + Gtin.of(content).get());
        }
        return new Symbology(prefix, content);
    }

    boolean isGs1() {
        return OF_GS1.contains(prefix);
    }
}
