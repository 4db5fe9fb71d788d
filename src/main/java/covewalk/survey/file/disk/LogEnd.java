package covewalk.survey.file.disk;

import covewalk.survey.Problem;
import java.io.Closeable;
import java.io.IOException;
import java.util.Arrays;

/**
 * The end of the log, where bytes are added that must not be lost.
 *
 * <p>After a write or a flush has failed, the channel is not used again: a system may drop what it could not write, call
 * the pages clean, and then report the next flush a success. Instead the file is opened anew, compared with what must be
 * there, written again at the same place and flushed again; only that second flush counts.
 */
public final class LogEnd implements Closeable {

    private final LogChannel.Opener opener;
    private final Log log;
    private LogChannel channel;
    private long end;
    private Problem stopped;

    /** Which log it is, and what is said when it cannot be written. */
    public enum Log {
        READINGS(FileNames.LOG, "log.stopped.absent", "log.stopped.unknown", "log.stopped.changed"),
        PUNCH(FileNames.PUNCH, "punch.stopped.absent", "punch.stopped.unknown", "punch.stopped.changed");

        private final String file;
        private final String absent;
        private final String unknown;
        private final String changed;

        Log(String file, String absent, String unknown, String changed) {
            this.file = file;
            this.absent = absent;
            this.unknown = unknown;
            this.changed = changed;
        }
    }

    /** The end of the reading log. */
    public LogEnd(LogChannel.Opener opener, long end) throws IOException {
        this(opener, end, Log.READINGS);
    }

    /** @param end where the whole rows of the log end */
    public LogEnd(LogChannel.Opener opener, long end, Log log) throws IOException {
        this.opener = opener;
        this.log = log;
        this.channel = opener.open();
        this.end = end;
    }

    /** Takes away what stands behind the whole rows. */
    public void cutUnfinished() throws IOException {
        channel.truncate(end);
        channel.force();
    }

    /** When this returns, the bytes are on disk. */
    public void add(byte[] bytes) throws NotKept {
        if (stopped != null) {
            throw new NotKept(stopped, null);
        }
        try {
            put(bytes);
        } catch (IOException failed) {
            putAgain(bytes, failed);
        }
        end += bytes.length;
    }

    private void put(byte[] bytes) throws IOException {
        if (channel.size() != end) {
            throw new IOException("its length changed");
        }
        channel.write(end, bytes);
        channel.force();
    }

    private void putAgain(byte[] bytes, IOException failed) throws NotKept {
        try {
            reopen();
            if (!endsWithPartOf(bytes)) {
                throw stop(Problem.refusal(log.changed), failed);
            }
            channel.write(end, bytes);
            channel.force();
        } catch (NotKept known) {
            throw known;
        } catch (IOException failedAgain) {
            throw stop(Problem.refusal(takeBack(bytes) ? log.absent : log.unknown,
                    DiskWords.reason(failedAgain)), failedAgain);
        }
    }

    /** Whether behind the end there is nothing but what was being written: all of it, a part, or nothing. */
    private boolean endsWithPartOf(byte[] bytes) throws IOException {
        byte[] there = channel.read(end, bytes.length + 1);
        boolean part = there.length <= bytes.length
                && Arrays.equals(there, 0, there.length, bytes, 0, there.length);
        return channel.size() >= end && part;
    }

    /** Leaves the log as it was before, so that no row that was called lost turns up later. */
    private boolean takeBack(byte[] bytes) {
        try {
            reopen();
            if (!endsWithPartOf(bytes)) {
                return false;
            }
            cutUnfinished();
            return true;
        } catch (IOException cannotBeReached) {
            return false;
        }
    }

    private void reopen() throws IOException {
        try {
            channel.close();
        } catch (IOException failed) {
            channel = opener.open(); // a failed close loses nothing that the comparison would not find missing
            return;
        }
        channel = opener.open();
    }

    private NotKept stop(Problem why, IOException cause) {
        stopped = why.at(log.file, 0, "");
        return new NotKept(stopped, cause);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
