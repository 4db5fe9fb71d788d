package covewalk.report;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.DiskWords;
import java.io.IOException;

/** Why there is no PDF. A fault of ours goes to the system's log with its trace. */
final class NoPdf {

    private NoPdf() {
    }

    static Problem because(Throwable why) {
        System.getLogger("covewalk").log(System.Logger.Level.DEBUG, "no PDF", why);
        if (why instanceof IOException disk) {
            return Problem.warning("report.no-pdf.disk", DiskWords.reason(disk));
        }
        return Problem.warning(why instanceof OutOfMemoryError ? "report.no-pdf.memory" : "report.no-pdf.fault");
    }

    /** What lies in its place stays there, mostly an earlier one that another program shows. */
    static Problem inTheWay(IOException why) {
        System.getLogger("covewalk").log(System.Logger.Level.DEBUG, "no PDF", why);
        return Problem.warning("report.no-pdf.in-the-way", DiskWords.reason(why));
    }
}
