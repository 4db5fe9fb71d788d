package covewalk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code covewalk} alone, where there is no screen for the field app. */
@Command(name = "covewalk", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        description = "Checks linear LED lighting in coves for visible colour steps, from readings taken on site. Without a"
                + " command, or with the folder of a survey alone, it opens the field app.",
        footer = {"", "Exit code 0: done, all within; 1: done, something is beyond the limit; 2: could not be done; 3: done,"
                + " nothing is beyond, but something is unsettled, not read or set aside.", "",
            "covewalk COMMAND --help says more about each."})
final class CovewalkCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    CovewalkCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        terminal.err().println(Sentences.of("no-screen"));
        terminal.err().println();
        terminal.err().print(spec.commandLine().getUsageMessage());
        return ExitCode.NOT_DONE;
    }
}
