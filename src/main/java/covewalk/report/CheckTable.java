package covewalk.report;

import covewalk.survey.Cove;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Judgement;
import covewalk.verdict.Note;
import covewalk.words.NoteWords;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The verdicts as a table of plain text, at most 100 columns wide, for a terminal. */
public final class CheckTable {

    private static final int WIDTH = 98;

    private final Words words;
    private final List<String> lines = new ArrayList<>();

    public CheckTable(Words words) {
        this.words = words;
    }

    /**
     * @param warnings on the survey, in words, one sentence each
     * @return lines ending in a line feed; the last counts beyond, unsettled, within and not read
     */
    public String of(Judgement judgement, List<String> warnings) {
        lines.clear();
        RuleWords rules = new RuleWords(words);
        say(words.text("table.limit", rules.limits(judgement.survey().limits())));
        say(words.text("table.rule", rules.steps(judgement), words.text(
                "rule.per." + judgement.survey().limits().errorPer().code() + ".short",
                words.numbers().percent(judgement.survey().limits().errorRate()))));
        judgement.coves().forEach(this::cove);
        remarks(judgement, warnings);
        lines.add("");
        lines.add(words.counts(judgement));
        return String.join("\n", lines) + "\n";
    }

    private void cove(CoveJudgement judged) {
        Cove cove = judged.cove();
        lines.add("");
        say(words.text("table.cove", cove.id(), Shortened.of(cove.place(), 60), words.numbers().metres(cove.lengthM()),
                cove.datum().isBlank() ? words.text("place.no-datum") : Shortened.of(cove.datum(), 60)));
        if (judged.joints().isEmpty()) {
            lines.add("  " + words.text("table.no-joints"));
        } else {
            lines.addAll(new JointTable(words).lines(judged.joints()));
        }
        judged.faults().stream().filter(fault -> fault.kind() != FaultKind.JOINT).forEach(this::fault);
    }

    private void fault(Fault fault) {
        String sentence = words.text("table.fault", words.kind(fault.kind()), words.numbers().metres(fault.positionM()),
                words.numbers().fixed(fault.fromM(), 2), words.numbers().metres(fault.toM()), String.join(" | ", fault.reels()),
                words.numbers().steps(fault.difference().steps()),
                words.numbers().steps(fault.difference().standardUncertaintySteps()), words.verdict(fault.verdict()),
                words.numbers().plain(fault.limitSteps(), 2), words.towards(fault.difference().towards()));
        PlainText.wrapped("- " + sentence + " " + words.suspicion(fault.hint()), WIDTH - 2, 2)
                .forEach(line -> lines.add("  " + line));
    }

    private void remarks(Judgement judgement, List<String> warnings) {
        NoteWords notes = new NoteWords(words);
        List<Note> all = Stream.concat(judgement.notes().stream(), judgement.coves().stream()
                .flatMap(cove -> cove.joints().stream()).flatMap(joint -> joint.notes().stream())
                .filter(note -> note.kind() == Note.Kind.RESTS_ON_DECLARED || note.kind() == Note.Kind.UNLIKE_REELS)).toList();
        List<String> remarks = Stream.concat(notes.sentences(all).stream(), warnings.stream()).toList();
        if (!remarks.isEmpty()) {
            lines.add("");
        }
        remarks.forEach(remark -> say(words.text("table.remark", remark)));
    }

    private void say(String sentence) {
        lines.addAll(PlainText.wrapped(sentence, WIDTH, 2));
    }
}
