package covewalk.cli;

import covewalk.report.data.VerifiedJson;
import covewalk.report.VerifiedWords;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.seal.SealCheck;
import covewalk.survey.file.seal.Verified;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code covewalk verify SURVEY}. */
@Command(name = "verify", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Says whether a survey was changed since its report was sealed.",
        description = "Compares the survey's files with the seals in its folder, or with the code printed beside a signature, which"
                + " shows as well whether the seals were replaced. Writes nothing.",
        footer = {"", "Exit code 0: unchanged; 3: only readings, records of items or files were added, and how many; 1: changed, and"
                + " which file; 2: never sealed, no such code, or the seals cannot be read."})
final class VerifyCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private SurveyArgument survey;

    @Option(names = "--against", paramLabel = "CODE", description = "the code on the report; small letters, spaces, and O for 0 or"
            + " I and L for 1 do not matter")
    private String code;

    @Option(names = "--json", description = "print JSON instead of sentences")
    private boolean json;

    VerifyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        if (Files.isRegularFile(survey.folder())) {
            throw CannotBeDone.because(Sentences.of("survey.is-file", survey.folder().getFileName().toString()));
        }
        List<Verified> all = Progress.during(Sentences.of("verifying"), terminal, this::verified);
        Verified verified = all.get(all.size() - 1);
        List<Verified> earlier = all.subList(0, all.size() - 1);
        if (json) {
            terminal.out().print(new VerifiedJson().of(verified, earlier));
        } else {
            tell(verified, earlier);
        }
        return earlier.stream().anyMatch(Verified::logChanged) ? ExitCode.BEYOND : code(verified.result());
    }

    private List<Verified> verified() throws IOException, CannotBeDone {
        return code == null ? valueOf(SealCheck.bySeals(survey.folder())) : List.of(valueOf(SealCheck.byCode(survey.folder(), code)));
    }

    private static <T> T valueOf(Outcome<T> outcome) throws CannotBeDone {
        if (outcome.refused()) {
            throw CannotBeDone.because(outcome.problems());
        }
        return outcome.value().orElseThrow();
    }

    private void tell(Verified verified, List<Verified> earlier) {
        VerifiedWords words = new VerifiedWords(Words.english());
        terminal.out().println(words.result(verified));
        verified.changes().forEach(change -> terminal.out().println("  " + words.change(change)));
        for (Verified seal : earlier) {
            terminal.out().println(words.earlier(seal));
            seal.changes().forEach(change -> terminal.out().println("  " + words.change(change)));
        }
        if (code == null) {
            terminal.out().println(Sentences.of("verify.own-seals", words.ownSeals()));
        }
    }

    private static int code(Verified.Result result) {
        return switch (result) {
            case UNCHANGED -> ExitCode.DONE;
            case ADDED -> ExitCode.OPEN;
            case CHANGED -> ExitCode.BEYOND;
        };
    }
}
