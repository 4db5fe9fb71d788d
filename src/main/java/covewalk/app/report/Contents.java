package covewalk.app.report;

import covewalk.report.punch.Audit;
import covewalk.report.punch.WarningWords;
import covewalk.survey.Visit;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import covewalk.words.NoteWords;
import covewalk.words.RuleWords;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a report will say, before it is written.
 *
 * @param counts how many places have each verdict, in the order of a report
 * @param notWalked ids of coves in which nothing was read
 * @param weak what weakens the evidence, and what looks wrong, one sentence each
 * @param inspector who signs for the readings; empty where nobody is named
 * @param setBy whose limit it is
 */
record Contents(Map<Verdict, Long> counts, List<String> notWalked, List<String> weak, Optional<String> inspector, String setBy) {

    private static final List<Verdict> ORDER = List.of(Verdict.BEYOND, Verdict.UNSETTLED, Verdict.WITHIN, Verdict.NOT_READ);

    static Contents of(Audit audit, Words words) {
        Judgement judgement = audit.judgement();
        Map<Verdict, Long> counts = new LinkedHashMap<>();
        ORDER.forEach(verdict -> counts.put(verdict, judgement.count(verdict)));
        List<String> notWalked = judgement.coves().stream().filter(cove -> cove.stations().isEmpty())
                .map(cove -> cove.cove().id()).toList();
        List<String> weak = new ArrayList<>(new NoteWords(words).sentences(judgement.notes()));
        WarningWords warnings = new WarningWords(words, audit);
        weak.addAll(warnings.general());
        judgement.coves().forEach(cove -> weak.addAll(warnings.ofCove(cove.cove().id())));
        Visit visit = judgement.survey().visit();
        return new Contents(counts, notWalked, weak, Optional.of(visit.inspector()).filter(name -> !name.isBlank()),
                new RuleWords(words).limits(judgement.survey().limits()));
    }
}
