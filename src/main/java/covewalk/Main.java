package covewalk;

import covewalk.cli.Commands;
import covewalk.cli.Terminal;
import java.time.Clock;

/** Starts Covewalk. */
public final class Main {

    private Main() {
    }

    public static void main(String[] args) {
        System.exit(new Commands(Terminal.ofThisProcess(), Clock.systemDefaultZone()).run(args));
    }
}
