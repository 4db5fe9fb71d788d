package covewalk.cli;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line, and what there is instead. */
final class ParameterWords implements IParameterExceptionHandler {

    private final Terminal terminal;

    ParameterWords(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public int handleParseException(ParameterException wrong, String[] asked) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        terminal.err().println(Sentences.of("command-line", command.qualifiedName(), sentence(wrong, command)));
        return ExitCode.NOT_DONE;
    }

    private static String sentence(ParameterException wrong, CommandSpec command) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched, command);
        }
        if (wrong instanceof MissingParameterException missing) {
            return missing(missing.getMissing());
        }
        if (wrong instanceof OverwrittenOptionException twice && twice.getOverwritten() instanceof OptionSpec option) {
            return Sentences.of("option.twice", option.longestName());
        }
        if (wrong.getArgSpec() instanceof OptionSpec option && option.arity().max() == 0) {
            return Sentences.of("option.no-value", option.longestName());
        }
        if (wrong.getCause() instanceof TypeConversionException value) {
            return Sentences.of("option.value", nameOf(wrong.getArgSpec()), value.getMessage());
        }
        return Sentences.of("option.unclear", String.valueOf(wrong.getValue()));
    }

    private static String unmatched(UnmatchedArgumentException unmatched, CommandSpec command) {
        String first = unmatched.getUnmatched().get(0);
        if (first.startsWith("-")) {
            return Sentences.of("option.unknown", first, options(command));
        }
        return command.subcommands().isEmpty() ? Sentences.of("argument.too-many", first)
                : Sentences.of("command.unknown", first, String.join(", ", command.subcommands().keySet()));
    }

    private static String missing(List<ArgSpec> missing) {
        return missing.stream().map(argument -> Sentences.of("missing", nameAndLabel(argument), argument.description()[0]))
                .collect(Collectors.joining(" "));
    }

    private static String options(CommandSpec command) {
        return command.options().stream().map(OptionSpec::longestName).collect(Collectors.joining(", "));
    }

    private static String nameOf(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String nameAndLabel(ArgSpec argument) {
        return Stream.of(nameOf(argument), argument.paramLabel()).distinct().collect(Collectors.joining(" "));
    }
}
