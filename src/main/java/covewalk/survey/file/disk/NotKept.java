package covewalk.survey.file.disk;

import covewalk.survey.Problem;
import java.io.IOException;
import java.util.Locale;

/** Readings that could not be put on disk. The log is stopped: nothing more is added to it until it is opened again. */
public final class NotKept extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    public NotKept(Problem problem, Throwable cause) {
        super(problem.inFull(Locale.ROOT), cause);
        this.problem = problem;
    }

    /** What happened, what is on disk now, and what to do. */
    public Problem problem() {
        return problem;
    }
}
