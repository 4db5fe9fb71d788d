package covewalk.cli;

import covewalk.survey.file.disk.DiskWords;
import java.io.IOException;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * Runs a command line. All that goes wrong comes out as sentences on the error output, never as a stack trace; the
 * exit code is 0 for done and all within, 1 for done and something beyond, 2 for not done, 3 for done and something
 * unsettled, not read or set aside.
 */
public final class Commands {

    private final Terminal terminal;
    private final Clock clock;

    /** @param clock tells when a folder was locked for writing, for whoever finds it locked */
    public Commands(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    /** @return the exit code */
    public int run(String... args) {
        int code = execute(args);
        Optional<IOException> failure = terminal.finish();
        if (failure.isEmpty()) {
            return code;
        }
        terminal.err().println(Sentences.of("output.failed", DiskWords.reason(failure.get(), Locale.ROOT)));
        return ExitCode.NOT_DONE;
    }

    private int execute(String... args) {
        try {
            return commandLine().execute(args);
        } catch (OutOfMemoryError tooLittle) {
            terminal.err().println(Sentences.of("memory"));
            return ExitCode.NOT_DONE;
        }
    }

    private CommandLine commandLine() {
        CommandLine line = new CommandLine(new CovewalkCommand(terminal));
        line.addSubcommand(new ConvertCommand(terminal));
        line.addSubcommand(new CheckCommand(terminal));
        line.addSubcommand(new PlanCommand(terminal));
        line.addSubcommand(new ReportCommand(terminal, clock));
        line.addSubcommand(new PunchCommand(terminal, clock));
        line.addSubcommand(new VerifyCommand(terminal));
        line.addSubcommand(new ImportCommand(terminal, clock));
        line.setOut(terminal.out()).setErr(terminal.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler(new ParameterWords(terminal));
        line.setExecutionExceptionHandler(new FailureWords(terminal));
        return line;
    }
}
