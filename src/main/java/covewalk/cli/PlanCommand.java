package covewalk.cli;

import covewalk.report.data.PlanJson;
import covewalk.report.text.PlanTable;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.plan.WalkPlan;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code covewalk plan SURVEY}. */
@Command(name = "plan", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Says where to read and how often, in walking order.",
        description = "Plans a walk that settles differences a step off the limit in nine cases of ten, given the meter. What"
                + " readings have settled already is not planned again.",
        footer = {"", "Writes nothing into the survey's folder. Exit code 0: done; 2: could not be done."})
final class PlanCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private SurveyArgument survey;

    @Option(names = "--json", description = "print JSON instead of a table")
    private boolean json;

    @Option(names = "--limit", paramLabel = "STEPS", converter = StepsOption.class,
            description = "plan for this many steps between neighbours, instead of the survey's own limit")
    private Double limit;

    @Option(names = "--setup", paramLabel = "ID", description = "plan for this set-up of the meter, instead of the survey's first")
    private String setUp;

    @Mixin
    private LanguageOption language;

    PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Words words = language.words();
        Judged judged = Judged.of(survey.read(terminal, words.locale()), Optional.ofNullable(limit), false, words, terminal);
        judged.warnings().print(terminal.err());
        WalkPlan plan = WalkPlan.of(judged.judgement(), setUp(judged.judgement().survey()));
        terminal.out().print(json ? new PlanJson(words).of(plan) : new PlanTable(words).of(plan));
        return ExitCode.DONE;
    }

    private SetUp setUp(Survey known) throws CannotBeDone {
        if (setUp == null) {
            return known.firstSetUp();
        }
        List<SetUp> fit = known.setUps().stream().filter(each -> each.id().equalsIgnoreCase(setUp.strip())).toList();
        Optional<SetUp> found = known.setUp(setUp).or(() -> fit.size() == 1 ? Optional.of(fit.get(0)) : Optional.empty());
        return found.orElseThrow(() -> CannotBeDone.because(Sentences.of("plan.no-such-setup", setUp.strip(),
                known.setUps().stream().map(SetUp::id).collect(Collectors.joining(", ")))));
    }
}
