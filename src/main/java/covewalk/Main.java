package covewalk;

import covewalk.app.Start;
import covewalk.cli.Commands;
import covewalk.cli.Terminal;
import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Starts Covewalk: the field app where no command is given but the folder of a survey at most, else the command. */
public final class Main {

    private Main() {
    }

    public static void main(String[] args) {
        boolean survey = args.length == 1 && new File(args[0], "survey.json").isFile();
        if ((args.length == 0 || survey) && Start.hasScreen(System.getenv(), System.getProperty("os.name"))
                && Start.open(survey ? Optional.of(Path.of(args[0])) : Optional.empty())) {
            System.exit(0);
        }
        System.exit(new Commands(Terminal.ofThisProcess(), Clock.systemDefaultZone()).run(survey ? new String[0] : args));
    }
}
