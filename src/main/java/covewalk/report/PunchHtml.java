package covewalk.report;

import covewalk.words.Words;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The punch list as one page of HTML that needs nothing else: no script, no style sheet or picture from elsewhere. */
final class PunchHtml {

    private final Words words;
    private final TemplateEngine pages = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "covewalk.report");

    PunchHtml(Words words) {
        this.words = words;
    }

    String of(PunchList list, List<String> warnings, String sealCode) {
        StringOutput out = new StringOutput();
        Map<String, Object> parts = Map.of("page", Page.of(list, warnings, sealCode, words), "css", css());
        pages.render("punchList.jte", parts, out);
        return legible(out.toString());
    }

    private static String css() {
        try (InputStream in = PunchHtml.class.getResourceAsStream("punch-list.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Leaves out what HTML and XML do not allow, and what would turn the reading direction of the sentences around it. */
    private static String legible(String html) {
        StringBuilder legible = new StringBuilder(html.length());
        html.codePoints().filter(c -> (c >= ' ' && c != 0x7F || c == '\n' || c == '\t') && !turns(c)
                && (c & 0xFFFE) != 0xFFFE && !(c >= 0xD800 && c <= 0xDFFF) && !(c > 0x7F && c < 0xA0)).forEach(legible::appendCodePoint);
        return legible.toString();
    }

    private static boolean turns(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }
}
