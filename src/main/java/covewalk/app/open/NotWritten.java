package covewalk.app.open;

import covewalk.survey.Problem;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Nothing was written, and why. */
final class NotWritten extends Exception {

    private static final long serialVersionUID = 1L;

    private static final Logger LOG = Logger.getLogger("covewalk.app");

    private final transient List<Problem> problems;

    NotWritten(List<Problem> problems) {
        super(problems.toString());
        this.problems = List.copyOf(problems);
    }

    /** A fault of the program's own while it wrote: told like one of the disk, since what waits must not wait in silence. */
    static NotWritten byFault(Throwable fault) {
        LOG.log(Level.WARNING, "could not write", fault);
        return new NotWritten(List.of(Problem.refusal("folder.fault")));
    }

    List<Problem> problems() {
        return problems;
    }
}
