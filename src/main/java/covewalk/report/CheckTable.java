package covewalk.report;

import covewalk.survey.Cove;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.Judgement;
import covewalk.words.NoteWords;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

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
        claims(judgement);
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
        List<Fault> others = judged.faults().stream().filter(fault -> fault.kind() != FaultKind.JOINT).toList();
        if (!others.isEmpty()) {
            lines.add("");
            lines.addAll(new FaultTable(words).lines(others));
        }
        hints(judged.faults());
    }

    /** Each suspicion once, with where. */
    private void hints(List<Fault> faults) {
        Map<Hint, String> places = new EnumMap<>(Hint.class);
        faults.stream().filter(fault -> fault.hint() != Hint.NONE).forEach(fault ->
                places.merge(fault.hint(), words.numbers().metres(fault.positionM()), (first, next) -> first + ", " + next));
        places.forEach((hint, where) -> say(words.text("table.hint", where, words.suspicion(hint), words.checkFirst(hint))));
    }

    private void claims(Judgement judgement) {
        if (judgement.claims().isEmpty()) {
            return;
        }
        ClaimBlock block = new ClaimBlock(words);
        lines.add("");
        say(block.counts(judgement.claims()));
        lines.addAll(block.settled(judgement.claims()));
        block.open(judgement.claims()).forEach(this::say);
        block.allowances(judgement).forEach(this::say);
    }

    private void remarks(Judgement judgement, List<String> warnings) {
        lines.add("");
        new NoteWords(words).sentences(judgement.notes()).forEach(note -> say(words.text("table.remark", note)));
        judgement.coves().forEach(this::remarks);
        warnings.forEach(warning -> say(words.text("table.remark", warning)));
    }

    private void remarks(CoveJudgement cove) {
        new NoteWords(words).byPlace(cove.joints()).forEach((note, places) ->
                say(words.text("table.remark.at", cove.cove().id(), String.join(", ", places), note)));
    }

    private void say(String sentence) {
        lines.addAll(PlainText.wrapped(sentence, WIDTH, 2));
    }
}
