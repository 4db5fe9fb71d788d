package covewalk.report;

import covewalk.survey.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The PDF beside the other files of a report. They are worth having without it, so nothing that happens to it stops them. */
final class UnfinishedPdf implements AutoCloseable {

    private final Path place;
    private final Optional<UnfinishedFile> made;
    private final Optional<Problem> whyNone;

    private UnfinishedPdf(Path place, Optional<UnfinishedFile> made, Optional<Problem> whyNone) {
        this.place = place;
        this.made = made;
        this.whyNone = whyNone;
    }

    /** Whatever the PDF's library stumbles over, a missing part of Java or too little memory, is kept for {@link #finish}. */
    static UnfinishedPdf of(Path place, UnfinishedFile.Content content) {
        try {
            return new UnfinishedPdf(place, Optional.of(UnfinishedFile.of(place, content)), Optional.empty());
        } catch (IOException | RuntimeException | LinkageError | VirtualMachineError noPdf) {
            return new UnfinishedPdf(place, Optional.empty(), Optional.of(NoPdf.because(noPdf)));
        }
    }

    /**
     * Puts it in its place, or takes an earlier one away where there is no new one: beside a new report it misleads. Some
     * systems allow neither while another program shows the earlier one; then it stays, and that is said.
     *
     * @param others what was written beside it
     */
    Report.Written finish(List<Path> others) {
        try {
            List<Path> files = new ArrayList<>(others);
            if (made.isPresent()) {
                files.add(made.get().finish());
            } else {
                Files.deleteIfExists(place);
            }
            return new Report.Written(files, whyNone);
        } catch (IOException inTheWay) {
            return new Report.Written(others, Optional.of(NoPdf.inTheWay(inTheWay)));
        }
    }

    @Override
    public void close() throws IOException {
        if (made.isPresent()) {
            made.get().close();
        }
    }
}
