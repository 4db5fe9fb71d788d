package covewalk.report.page;

import covewalk.survey.Survey;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.stream.Collectors;

/**
 * What stands on every sheet, so that a loose one can be put back: site and date on the left, seal and page on the right.
 */
public record RunningHead(Words words, String left, String seal) {

    private static final int LONGEST = 70;

    static RunningHead of(Survey survey, String sealCode, Words words) {
        return of(words.text("page.name"), survey, sealCode, words);
    }

    /** @param name what kind of page it is */
    static RunningHead of(String name, Survey survey, String sealCode, Words words) {
        String site = survey.site().name().isBlank() ? words.text("page.no-site") : Shortened.of(survey.site().name(), LONGEST);
        String date = survey.visit().date().map(Object::toString).orElseGet(() -> words.text("page.no-date"));
        return new RunningHead(words, words.text("page.head", name, site, date),
                sealCode.isEmpty() ? words.text("page.head.not-sealed") : words.text("page.head.seal", sealCode));
    }

    /** For one sheet of the PDF. */
    public String right(int page, int pages) {
        return words.text("page.head.right", seal, words.numbers().fixed(page, 0), words.numbers().fixed(pages, 0));
    }

    /** The margin boxes with which a browser prints the same; a browser that does not know them leaves them out. */
    public String css() {
        return "@page { @top-left { content: " + string(left) + "; } @top-right { content: "
                + string(words.text("page.head.right", seal, "\0", "\1")).replace("\\0 ", "\" counter(page) \"")
                        .replace("\\1 ", "\" counter(pages) \"") + "; } }";
    }

    /** As a CSS string in which nothing but letters and digits of ASCII stands for itself (CSS 2.1, 4.1.3). */
    private static String string(String text) {
        return text.codePoints().mapToObj(c -> c < 0x80 && Character.isLetterOrDigit(c) ? Character.toString(c)
                : "\\" + Integer.toHexString(c) + " ").collect(Collectors.joining("", "\"", "\""));
    }
}
