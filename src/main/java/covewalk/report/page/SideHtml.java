package covewalk.report.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** A page for one reader as HTML that needs nothing else, like that of the punch list. */
public final class SideHtml {

    private final TemplateEngine pages = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "covewalk.report.page");
    private final String css = StyleSheet.read("punch-list.css") + StyleSheet.read("side.css");

    /** The whole of it, for a browser. */
    public String of(SidePage page) {
        return of(page, page.head().css(), "");
    }

    /**
     * The same for the maker of the PDF, which heads each page itself.
     *
     * @param remark about the paper itself; mostly empty
     */
    public String forPaper(SidePage page, String remark) {
        return of(page, "", remark);
    }

    private String of(SidePage page, String headCss, String remark) {
        String style = "@page { size: " + page.style().paper().code() + "; }\n" + css + headCss;
        StringWriter html = new StringWriter();
        try (LegibleWriter legible = new LegibleWriter(html)) {
            pages.render("side.jte", Map.of("page", page, "css", style, "remark", remark), new WriterOutput(legible));
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
        return html.toString();
    }
}
