package covewalk.report.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;

/** The report as a page of HTML that needs nothing else: no script, no style sheet, picture or font from elsewhere. */
public final class PunchHtml {

    private final TemplateEngine pages = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "covewalk.report.page");
    private final String css = StyleSheet.read("punch-list.css");

    /** The whole of it, for a browser. */
    public void write(Page page, Writer out) {
        write(page, Sheets.all(page), page.head().css(), out);
    }

    /** A run of its pages, for the maker of the PDF, which heads each page itself. */
    public String of(Page page, Sheets sheets) {
        StringWriter out = new StringWriter();
        write(page, sheets, "", out);
        return out.toString();
    }

    private void write(Page page, Sheets sheets, String headCss, Writer out) {
        String style = "@page { size: " + page.style().paper().code() + "; }\n" + css + headCss;
        try (Writer legible = new LegibleWriter(out)) {
            pages.render("punchList.jte", Map.of("page", page, "sheets", sheets, "css", style), new WriterOutput(legible));
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }
}
