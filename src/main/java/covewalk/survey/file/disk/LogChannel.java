package covewalk.survey.file.disk;

import java.io.Closeable;
import java.io.IOException;

/** What the writer of the log needs of a file; tests put a disk of their own behind it. */
public interface LogChannel extends Closeable {

    /** How long the file is that lies at the log's place now. */
    long size() throws IOException;

    /** The bytes from there to the end of the file, at most {@code most}. */
    byte[] read(long from, int most) throws IOException;

    void write(long at, byte[] bytes) throws IOException;

    void truncate(long size) throws IOException;

    /** Returns when everything written is on the disk. */
    void force() throws IOException;

    /** Opens the log anew, and makes an empty one where there is none. */
    interface Opener {
        LogChannel open() throws IOException;
    }
}
