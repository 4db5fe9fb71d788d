package covewalk.report;

import covewalk.report.page.PageStyle;
import covewalk.report.punch.Audit;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** All files of a report for its readers: the punch list, then the page beside it that one of them gets. */
public final class Edition {

    private final Words words;
    private final PageStyle style;
    private final Readership readers;

    public Edition(Words words, PageStyle style, Readership readers) {
        this.words = words;
        this.style = style;
        this.readers = readers;
    }

    /**
     * Writes them, one part after the other.
     *
     * @param survey the survey's folder, whose photos a dossier shows
     * @param out made where it is missing
     * @param stopped asked before each file is made
     * @param told of each part once it is written; less where it was stopped
     */
    public void write(Audit audit, Path survey, Path out, BooleanSupplier stopped, Consumer<Report.Written> told) throws IOException {
        Report.Written list = new Report(words, style).write(audit, out, stopped);
        if (list.files().isEmpty()) {
            return;
        }
        told.accept(list);
        if (readers.reader() != Readership.Reader.EVERYBODY && !stopped.getAsBoolean()) {
            SideReport side = new SideReport(words, style);
            told.accept(readers.reel().isEmpty() ? side.forSpecifier(audit, out)
                    : side.forWarranty(audit, readers.reel().get(), survey, out));
        }
    }
}
