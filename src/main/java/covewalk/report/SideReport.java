package covewalk.report;

import covewalk.report.page.PageStyle;
import covewalk.report.page.SideHtml;
import covewalk.report.page.SidePage;
import covewalk.report.page.SpecifierPage;
import covewalk.report.page.WarrantyPage;
import covewalk.report.pdf.SidePdf;
import covewalk.report.punch.Audit;
import covewalk.report.punch.Neighbour;
import covewalk.survey.Reel;
import covewalk.survey.file.Photo;
import covewalk.survey.file.Photos;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Writes the pages for one reader beside the punch list: for who settles a dispute, and for who decides on a claim. */
public final class SideReport {

    private static final int LONGEST_NAME = 60;

    private final Words words;
    private final PageStyle style;

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
                    out -> out.write(new SideHtml().of(page).getBytes(StandardCharsets.UTF_8)));
                UnfinishedPdf pdf = UnfinishedPdf.of(outDir.resolve(name + ".pdf"), out -> new SidePdf().write(page, out))) {
            return pdf.finish(List.of(html.finish()));
        }
    }
}
