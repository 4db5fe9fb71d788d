package covewalk.app.open;

import covewalk.survey.file.log.ReadingLog;
import java.io.IOException;

/** Work in a survey's folder by whoever writes in it. */
@FunctionalInterface
public interface DiskWork<T> {

    /** @param log the open log; its lock is the folder's */
    T with(ReadingLog log) throws IOException;
}
