package covewalk.survey.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Elements in a row: as a scanner sends them, or with brackets around the identifiers as printed below a bar code. Either
 * all of it can be read, or none of it counts.
 */
final class ElementString {

    private static final Pattern BRACKETS = Pattern.compile("\\((\\d{2,4})\\)");
    private static final String GTIN = "01";

    private ElementString() {
    }

    /** @param unmarked whether nothing says so far that this is a code of GS1: then a GTIN must lead it, and check */
    static Optional<LabelCode> read(String text, boolean unmarked) {
        if (text.startsWith("(")) {
            return bracketed(text);
        }
        Optional<LabelCode> code = inARow(Separator.plain(text));
        boolean certain = !unmarked || Separator.isIn(text) && code.flatMap(LabelCode::gtin).isPresent() || leadsWithGtin(text);
        return certain ? code : Optional.empty();
    }

    private static boolean leadsWithGtin(String text) {
        return text.startsWith(GTIN) && text.length() >= 16 && Gtin.of(text.substring(2, 16)).filter(Gtin::checks).isPresent();
    }

    private static Optional<LabelCode> inARow(String text) {
        List<Element> elements = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            Optional<Identifier> found = Identifier.at(text.substring(at));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            int from = at + found.get().ai().length();
            int to = end(found.get(), text, from);
            if (!add(elements, found.get(), text.substring(from, to))) {
                return Optional.empty();
            }
            at = to < text.length() && text.charAt(to) == Separator.GS ? to + 1 : to; // one too many is harmless
        }
        return code(elements);
    }

    private static int end(Identifier identifier, String text, int from) {
        int separator = text.indexOf(Separator.GS, from);
        int last = separator < 0 ? text.length() : separator;
        return identifier.fixed() ? Math.min(last, from + identifier.most()) : last;
    }

    private static Optional<LabelCode> bracketed(String text) {
        List<Element> elements = new ArrayList<>();
        Matcher brackets = BRACKETS.matcher(text);
        boolean more = brackets.lookingAt();
        while (more) {
            String ai = brackets.group(1);
            int from = brackets.end();
            more = brackets.find();
            String data = Separator.out(text.substring(from, more ? brackets.start() : text.length())).strip();
            Optional<Identifier> identifier = Identifier.at(ai).filter(known -> known.ai().equals(ai));
            if (identifier.isEmpty() || !add(elements, identifier.get(), data)) {
                return Optional.empty();
            }
        }
        return code(elements);
    }

    private static boolean add(List<Element> elements, Identifier identifier, String data) {
        return identifier.takes(data) && elements.add(new Element(identifier.ai(), data));
    }

    private static Optional<LabelCode> code(List<Element> elements) {
        return elements.isEmpty() ? Optional.empty() : Optional.of(new LabelCode(elements));
    }
}
