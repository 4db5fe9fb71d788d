package covewalk.report;

import covewalk.survey.Reel;
import covewalk.survey.file.Photo;
import covewalk.survey.file.Photos;
import covewalk.words.Words;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Writes the pages for one reader beside the punch list: for who settles a dispute, and for who decides on a claim. */
public final class SideReport {

    private static final int LONGEST_NAME = 60;

    private final Words words;
    private final PageStyle style;
    private final TemplateEngine pages = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "covewalk.report");

    public SideReport(Words words, PageStyle style) {
        this.words = words;
        this.style = style;
    }

    /** Writes {@code specifier.html} and {@code .pdf}: each joint in dispute on a page of its own. */
    public Report.Written forSpecifier(Audit audit, Path outDir) throws IOException {
        return write(new SpecifierPage(words, style).of(audit), "specifier", outDir);
    }

    /**
     * Writes the dossier of a reel, {@code warranty-REEL.html} and {@code .pdf}.
     *
     * @param survey the survey's folder, whose photos of the reel and of what it is compared with are shown
     */
    public Report.Written forWarranty(Audit audit, Reel reel, Path survey, Path outDir) throws IOException {
        List<Photo> photos = new ArrayList<>(Photos.of(survey, reel.id()));
        Optional<Reel> neighbour = Neighbour.toCompare(audit.judgement(), reel);
        if (neighbour.isPresent()) {
            photos.addAll(Photos.of(survey, neighbour.get().id()));
        }
        return write(new WarrantyPage(words, style).of(audit, reel, photos), "warranty-" + fileName(reel.id()), outDir);
    }

    /** An id as a part of a file's name: what some system does not take becomes a low line, and then a number tells it from others. */
    static String fileName(String id) {
        String safe = id.replaceAll("[^A-Za-z0-9._-]", "_");
        if (safe.equals(id) && id.length() <= LONGEST_NAME && !id.isEmpty()) {
            return id;
        }
        String number = UUID.nameUUIDFromBytes(id.getBytes(StandardCharsets.UTF_8)).toString().substring(0, 8);
        return safe.substring(0, Math.min(LONGEST_NAME, safe.length())) + "-" + number;
    }

    private Report.Written write(SidePage page, String name, Path outDir) throws IOException {
        Files.createDirectories(outDir);
        try (UnfinishedFile html = UnfinishedFile.of(outDir.resolve(name + ".html"),
                    out -> out.write(html(page, page.head().css(), "").getBytes(StandardCharsets.UTF_8)));
                UnfinishedPdf pdf = UnfinishedPdf.of(outDir.resolve(name + ".pdf"), out -> pdf(page, out))) {
            return pdf.finish(List.of(html.finish()));
        }
    }

    /**
     * @param headCss with which a browser prints the running head
     * @param remark about the paper itself; mostly empty
     */
    String html(SidePage page, String headCss, String remark) throws IOException {
        String css = "@page { size: " + style.paper().code() + "; }\n" + sheet("punch-list.css") + sheet("side.css") + headCss;
        StringWriter html = new StringWriter();
        try (LegibleWriter legible = new LegibleWriter(html)) {
            pages.render("side.jte", Map.of("page", page, "css", css, "remark", remark), new WriterOutput(legible));
        }
        return html.toString();
    }

    private void pdf(SidePage page, OutputStream out) throws IOException {
        PdfFonts fonts = new PdfFonts();
        PrintableText html = fonts.printable(html(page, "", ""));
        String remarked = html.lacking().isEmpty() ? html.text()
                : fonts.printable(html(page, "", words.text("page.letters", html.named()))).text();
        PdfPart part = PdfPart.of(remarked, fonts, true);
        try (PDDocument document = part.document()) {
            new PdfHeads(document, fonts, page.head()).write();
            PdfOutline.write(document, part.headings());
            PdfIdentity.write(document, page.name() + ": " + page.title(), page.language(), page.head().seal(), true);
            document.save(out);
        }
    }

    private static String sheet(String name) throws IOException {
        try (InputStream in = SideReport.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
