package covewalk.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * The standard output, which remembers how it failed: writers above it swallow failures, and one that only stopped
 * reading ({@code | head}) is no failure at all.
 */
final class Output extends FilterOutputStream {

    private IOException failure;

    Output(OutputStream to) {
        super(to);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        if (failure != null) {
            throw failure;
        }
        try {
            out.write(bytes, offset, length);
        } catch (IOException failed) {
            failure = failed;
            throw failed;
        }
    }

    boolean failed() {
        return failure != null;
    }

    /** How it failed, except where nobody wants to read on. */
    Optional<IOException> realFailure() {
        return Optional.ofNullable(failure).filter(failed -> !nobodyReadsOn(failed));
    }

    /** Systems put it in their own language, but all but few keep the word. */
    private static boolean nobodyReadsOn(IOException failed) {
        return String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
    }
}
