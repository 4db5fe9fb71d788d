package covewalk.cli;

import covewalk.survey.file.convert.ConvertOptions;
import covewalk.survey.file.convert.ConvertResult;
import covewalk.survey.file.convert.TableConversion;
import covewalk.survey.file.meter.HeaderTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code covewalk convert [FILE]}. */
@Command(name = "convert", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Converts the colours of a table.",
        description = "Given x,y or cct_k,duv or u_prime,v_prime it prints the same rows"
                + " with all six filled in or appended, and a column \"problem\" that says why a row could not be converted.",
        footer = {"", "CIE 1931 2 degree observer; Planck's law with c2 = 1.4388e-2 m K. Exit code 0 also with problem rows: they"
                + " are counted on the error output; 2: could not be done."})
final class ConvertCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", converter = PathOption.class,
            description = "the table; without it, or as -, the standard input")
    private Path file;

    @Option(names = "--digits", paramLabel = "N", defaultValue = "6", converter = DigitsOption.class,
            description = "significant digits of what is added, 1 to 12 (usually ${DEFAULT-VALUE})")
    private int digits;

    ConvertCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        if (file == null || file.toString().equals("-")) {
            if (terminal.watched()) {
                terminal.err().println(Sentences.of("convert.from-keyboard"));
            }
            return tell("", convert(terminal.in()));
        }
        InputFile.check(file);
        try (InputStream in = Files.newInputStream(file)) {
            return tell(file.getFileName().toString(), Progress.during(Sentences.of("converting"), terminal, () -> convert(in)));
        }
    }

    private ConvertResult convert(InputStream in) throws IOException {
        ConvertOptions options = new ConvertOptions(digits, Locale.ROOT);
        return new TableConversion(HeaderTable.ofTheTrade(), options).convert(in, terminal.bytes());
    }

    private int tell(String name, ConvertResult result) {
        if (result.problems() > 0) {
            terminal.err().println(Sentences.of("convert.problems", Long.toString(result.problems()), Long.toString(result.rows())));
        }
        result.refusal().ifPresent(why -> terminal.err().println(why.at(name, why.line(), why.column()).inFull(Locale.ROOT)));
        return result.refusal().isPresent() ? ExitCode.NOT_DONE : ExitCode.DONE;
    }
}
