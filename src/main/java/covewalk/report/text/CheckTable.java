package covewalk.report.text;

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
import java.util.function.Function;

/** The verdicts as a table of plain text, at most 100 columns wide, for a terminal. */
public final class CheckTable {

    private static final int WIDTH = 98;

    private final Words words;

    public CheckTable(Words words) {
        this.words = words;
    }

    /**
     * @param warnings on the survey, in words, one sentence each
     * @return lines ending in a line feed; the last counts beyond, unsettled, within and not read
     */
    public String of(Judgement judgement, List<String> warnings) {
        RuleWords rules = new RuleWords(words);
        List<String> lines = new ArrayList<>();
        lines.addAll(said(words.text("table.limit", rules.limits(judgement.survey().limits()))));
        lines.addAll(said(words.text("table.rule", rules.steps(judgement), words.text(
                "rule.per." + judgement.survey().limits().errorPer().code() + ".short",
                words.numbers().percent(judgement.survey().limits().errorRate())))));
        lines.addAll(ofEach(judgement, this::cove));
        lines.addAll(claims(judgement));
        lines.addAll(remarks(judgement, warnings));
        lines.add("");
        lines.add(words.counts(judgement));
        return String.join("\n", lines) + "\n";
    }

    /** Cove by cove, on all processors: a large survey has thousands. */
    private static List<String> ofEach(Judgement judgement, Function<CoveJudgement, List<String>> lines) {
        return judgement.coves().parallelStream().map(lines).flatMap(List::stream).toList();
    }

    private List<String> cove(CoveJudgement judged) {
        Cove cove = judged.cove();
        List<String> lines = new ArrayList<>(List.of(""));
        lines.addAll(said(words.text("table.cove", cove.id(), Shortened.of(cove.place(), 60), words.numbers().metres(cove.lengthM()),
                cove.datum().isBlank() ? words.text("place.no-datum") : Shortened.of(cove.datum(), 60))));
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
        lines.addAll(hints(judged.faults()));
        return lines;
    }

    /** Each suspicion once, with where. */
    private List<String> hints(List<Fault> faults) {
        Map<Hint, String> places = new EnumMap<>(Hint.class);
        faults.stream().filter(fault -> fault.hint() != Hint.NONE).forEach(fault ->
                places.merge(fault.hint(), words.numbers().metres(fault.positionM()), (first, next) -> first + ", " + next));
        List<String> lines = new ArrayList<>();
        places.forEach((hint, where) ->
                lines.addAll(said(words.text("table.hint", where, words.suspicion(hint), words.checkFirst(hint)))));
        return lines;
    }

    private List<String> claims(Judgement judgement) {
        if (judgement.claims().isEmpty()) {
            return List.of();
        }
        ClaimBlock block = new ClaimBlock(words);
        List<String> lines = new ArrayList<>(List.of(""));
        lines.addAll(said(block.counts(judgement.claims())));
        lines.addAll(block.settled(judgement.claims()));
        block.open(judgement.claims()).forEach(open -> lines.addAll(said(open)));
        block.allowances(judgement).forEach(allowance -> lines.addAll(said(allowance)));
        return lines;
    }

    private List<String> remarks(Judgement judgement, List<String> warnings) {
        List<String> lines = new ArrayList<>(List.of(""));
        new NoteWords(words).sentences(judgement.notes()).forEach(note -> lines.addAll(said(words.text("table.remark", note))));
        lines.addAll(ofEach(judgement, this::remarks));
        warnings.forEach(warning -> lines.addAll(said(words.text("table.remark", warning))));
        return lines;
    }

    private List<String> remarks(CoveJudgement cove) {
        List<String> lines = new ArrayList<>();
        new NoteWords(words).byPlace(cove.joints()).forEach((note, places) ->
                lines.addAll(said(words.text("table.remark.at", cove.cove().id(), String.join(", ", places), note))));
        return lines;
    }

    private static List<String> said(String sentence) {
        return PlainText.wrapped(sentence, WIDTH, 2);
    }
}
