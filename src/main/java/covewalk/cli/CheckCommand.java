package covewalk.cli;

import covewalk.report.data.CheckJson;
import covewalk.report.text.CheckTable;
import covewalk.report.punch.EarlierVisit;
import covewalk.survey.Typed;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code covewalk check SURVEY}. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Judges the joints of a survey and lists its faults.",
        description = "Says of every joint whether the two reels differ by more steps than the limit allows, and lists the"
                + " other faults the readings show.",
        footer = {"", "Writes nothing into the survey's folder. Exit code 0: all within; 1: something beyond; 2: could not be"
                + " done; 3: nothing beyond, something unsettled or not read."})
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private SurveyArgument survey;

    @Option(names = "--json", description = "print JSON instead of a table")
    private boolean json;

    @Option(names = "--limit", paramLabel = "STEPS", converter = StepsOption.class,
            description = "judge by this many steps between neighbours, instead of the survey's own limit")
    private Double limit;

    @Option(names = "--worst", description = "put the largest step of each cove first, instead of walking order")
    private boolean worst;

    @Option(names = "--explain", paramLabel = "POSITION", converter = LengthOption.class,
            description = "explain the verdict on the joint or fault nearest to this position, in m from the datum, or with"
                    + " a unit as in 16 ft 5 in")
    private Typed explain;

    @Option(names = "--cove", paramLabel = "ID", description = "this cove alone; with --explain, the cove"
            + " whose place is explained")
    private String cove;

    @Mixin
    private CorrectDriftOption correctDrift;

    @Mixin
    private LanguageOption language;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        refuseWhatDoesNotGoTogether();
        Words words = language.words();
        Judged judged = Judged.of(survey.read(terminal, words.locale()), Optional.ofNullable(limit), correctDrift.asked(), words, terminal);
        if (explain != null) {
            terminal.out().print(Explained.of(judged.judgement(), Optional.ofNullable(cove), explain.value(), words));
            return ExitCode.of(judged.judgement());
        }
        Judgement all = cove == null ? judged.judgement() : OneCove.of(judged.judgement(), cove);
        Judgement judgement = worst ? WorstFirst.of(all) : all;
        Warnings warnings = judged.warnings().and(EarlierVisit.toKnow(survey.folder(), judgement.survey()));
        if (json) {
            warnings.print(terminal.err());
            terminal.out().print(new CheckJson().of(judgement));
        } else {
            terminal.out().print(new CheckTable(words).of(judgement, warnings.inWords()));
        }
        return ExitCode.of(judgement);
    }

    /** An explanation is a text about one place. */
    private void refuseWhatDoesNotGoTogether() throws CannotBeDone {
        if (explain != null && (json || worst)) {
            throw CannotBeDone.because(Sentences.of("explain.alone", json ? "--json" : "--worst"));
        }
    }
}
