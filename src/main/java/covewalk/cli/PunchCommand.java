package covewalk.cli;

import covewalk.report.punch.NumberedList;
import covewalk.report.punch.PunchList;
import covewalk.report.data.StateJson;
import covewalk.report.text.StateTable;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code covewalk punch SURVEY}. */
@Command(name = "punch", mixinStandardHelpOptions = true, versionProvider = VersionOfBuild.class,
        header = "Shows how the items of the punch list stand, and records it.",
        description = "Lists the items with who puts them right, by when, and how far they have come. With --item and what to"
                + " record it adds that to the survey's punch.csv, which is only ever added to. A hyphen clears: --due -",
        footer = {"", "An item keeps its number for good. Recorded dates say what people did; what is found is what the readings"
                + " say. Exit code 0: recorded, or every item shown is accepted or not found any more; 1: an item shown is beyond the"
                + " limit and not accepted; 2: could not be done; 3: nothing of that, but an item shown is unsettled and not accepted."})
final class PunchCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Clock clock;

    @Mixin
    private SurveyArgument survey;

    @Option(names = "--item", paramLabel = "N", split = ",", converter = ItemOption.class,
            description = "the item's number; several with commas between them")
    private List<Integer> items = List.of();

    @Mixin
    private PunchOptions toRecord;

    @Option(names = "--json", description = "print JSON instead of a table")
    private boolean json;

    @Mixin
    private CorrectDriftOption correctDrift;

    @Mixin
    private LanguageOption language;

    PunchCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        toRecord.check(language.words().locale());
        if (toRecord.none()) {
            return show(list());
        }
        if (items.isEmpty()) {
            throw CannotBeDone.because(Sentences.of("punch.which-item", toRecord.first()));
        }
        return record();
    }

    private NumberedList list() throws Exception {
        Words words = language.words();
        ReadSurvey read = survey.read(terminal, words.locale());
        Judgement judgement = Judged.of(read, Optional.empty(), correctDrift.asked(), words, terminal).judgement();
        return list(judgement);
    }

    private NumberedList list(Judgement judgement) throws IOException, CannotBeDone {
        return valueOf(NumberedList.of(survey.folder(), judgement, correctDrift.asked()));
    }

    private NumberedList valueOf(Outcome<NumberedList> outcome) throws CannotBeDone {
        if (outcome.refused()) {
            throw CannotBeDone.because(outcome.problems(), language.words().locale());
        }
        return outcome.value().orElseThrow();
    }

    private int record() throws Exception {
        Outcome<FolderLock> lock = survey.lock(Holder.here("covewalk punch", clock));
        try (FolderLock held = lock.value().orElse(null)) {
            NumberedList before = list();
            if (held == null) {
                throw CannotBeDone.because(lock.problems(), language.words().locale());
            }
            checkItems(before.list());
            Outcome<NumberedList> now = recorded(before, held);
            new Warnings(now.problems(), language.words()).print(terminal.err());
            String recorded = new TreeSet<>(items).stream().map(String::valueOf).collect(Collectors.joining(", "));
            terminal.err().println(Sentences.of("punch.recorded", recorded));
            show(list(before.list().judgement()));
            return ExitCode.DONE;
        }
    }

    private Outcome<NumberedList> recorded(NumberedList before, FolderLock held) throws IOException, CannotBeDone {
        try {
            Outcome<NumberedList> now = before.recorded(held, new TreeSet<>(items).stream().map(toRecord::of).toList());
            valueOf(now);
            return now;
        } catch (NotKept notKept) {
            throw CannotBeDone.because(List.of(notKept.problem()), language.words().locale());
        }
    }

    private int show(NumberedList numbered) throws IOException, CannotBeDone {
        checkItems(numbered.list());
        new Warnings(numbered.toKnow(), language.words()).print(terminal.err());
        PunchList shown = items.isEmpty() ? numbered.list() : numbered.list().only(items);
        terminal.out().print(json ? new StateJson().of(shown) : new StateTable(language.words()).of(shown));
        return ExitCode.of(shown);
    }

    private void checkItems(PunchList list) throws CannotBeDone {
        List<Integer> known = list.numbers();
        Optional<Integer> unknown = items.stream().filter(item -> !known.contains(item)).findFirst();
        if (unknown.isPresent()) {
            String there = known.stream().map(String::valueOf).collect(Collectors.joining(", "));
            throw CannotBeDone.because(Sentences.of("punch.no-such-item", unknown.get().toString(),
                    known.isEmpty() ? Sentences.of("punch.no-items") : Sentences.of("punch.items-are", there)));
        }
    }
}
