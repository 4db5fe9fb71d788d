package covewalk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.util.Optional;

/** What a command reads from and writes to. Text is UTF-8 whatever the system uses, and its lines end alike everywhere. */
public final class Terminal {

    private final InputStream in;
    private final Output output;
    private final OutputStream buffered;
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean watched;

    /** @param watched whether a person looks on, who wants to know that long work goes on */
    public Terminal(InputStream in, OutputStream out, OutputStream err, boolean watched) {
        this.in = in;
        this.output = new Output(out);
        this.buffered = new BufferedOutputStream(output, 1 << 16);
        this.out = new SameLineEnds(buffered, false);
        this.err = new SameLineEnds(err, true);
        this.watched = watched;
    }

    /** The streams of this process. */
    public static Terminal ofThisProcess() {
        return new Terminal(System.in, new FileOutputStream(FileDescriptor.out), new FileOutputStream(FileDescriptor.err),
                isWatched(System.console()));
    }

    /** Java 22 and later hand out a console where there is none too, and have a method to ask; Java 17 has not. */
    private static boolean isWatched(Console console) {
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException olderJava) {
            return true;
        }
    }

    InputStream in() {
        return in;
    }

    /** The standard output as bytes; what was printed before comes first. */
    OutputStream bytes() {
        out.flush();
        return buffered;
    }

    PrintWriter out() {
        return out;
    }

    PrintWriter err() {
        return err;
    }

    boolean watched() {
        return watched;
    }

    boolean outputFailed() {
        return output.failed();
    }

    /** Writes out what is left, and says how the output failed, unless it was only closed early. */
    Optional<IOException> finish() {
        out.flush();
        err.flush();
        return output.realFailure();
    }

    /** The system's line end would make the same survey give other bytes elsewhere. */
    private static final class SameLineEnds extends PrintWriter {

        private final boolean flushesLines;

        SameLineEnds(OutputStream to, boolean flushesLines) {
            super(new OutputStreamWriter(to, UTF_8));
            this.flushesLines = flushesLines;
        }

        @Override
        public void println() {
            write('\n');
            if (flushesLines) {
                flush();
            }
        }
    }
}
