package covewalk.report.text;

import covewalk.verdict.CoveJudgement;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.claim.Allowances;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.claim.WhyOpen;
import covewalk.verdict.limit.Verdict;
import covewalk.words.ClaimWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the labels claim, in a few lines for a terminal: counts, the reels that are settled, why the others are not. */
final class ClaimBlock {

    private static final int LONGEST_LIST = 160;

    private final Words words;
    private final ClaimWords claimWords;

    ClaimBlock(Words words) {
        this.words = words;
        this.claimWords = new ClaimWords(words);
    }

    /** How many claims have each verdict. */
    String counts(List<ReelClaim> claims) {
        return words.text("claim.counts", count(claims, ClaimVerdict.SHOWN), count(claims, ClaimVerdict.NOT_SHOWN),
                count(claims, ClaimVerdict.UNSETTLED), count(claims, ClaimVerdict.NOT_READ));
    }

    private String count(List<ReelClaim> claims, ClaimVerdict verdict) {
        return words.numbers().fixed(claims.stream().filter(claim -> claim.verdict() == verdict).count(), 0);
    }

    /** Rows for those shown and not shown, with a head; none where all are open. */
    List<String> settled(List<ReelClaim> claims) {
        List<List<String>> rows = new ArrayList<>();
        claims.stream().filter(claim -> claim.why() == WhyOpen.NONE).map(this::row).forEach(rows::add);
        if (rows.isEmpty()) {
            return List.of();
        }
        rows.add(0, List.of("reel", "claim", "steps", "uncertainty", "claim-is").stream()
                .map(column -> words.text("table.column." + column)).toList());
        return PlainText.columns(rows, Set.of(2, 3));
    }

    private List<String> row(ReelClaim claim) {
        ReelClaim.Measured measured = claim.measured().orElseThrow();
        return List.of(PlainText.calm(claimWords.reel(claim)), claimWords.claim(claim), words.numbers().steps(measured.steps()),
                words.numbers().steps(measured.standardUncertaintySteps()), claimWords.verdict(claim));
    }

    /** One sentence for each reason, with the reels it holds for. */
    List<String> open(List<ReelClaim> claims) {
        Map<WhyOpen, List<ReelClaim>> open = claims.stream().filter(claim -> claim.why() != WhyOpen.NONE)
                .collect(Collectors.groupingBy(ReelClaim::why, TreeMap::new, Collectors.toList()));
        return open.entrySet().stream().map(why -> words.text("claim.open", Shortened.of(why.getValue().stream()
                .map(claimWords::reel).collect(Collectors.joining(", ")), LONGEST_LIST), claimWords.why(why.getKey()))).toList();
    }

    /** What claims allow at the joints that are not within, the same allowance once with all its places. */
    List<String> allowances(Judgement judgement) {
        Allowances allowances = new Allowances(judgement.survey());
        Map<String, List<String>> places = new LinkedHashMap<>();
        for (CoveJudgement cove : judgement.coves()) {
            cove.joints().stream().filter(joint -> joint.verdict() == Verdict.BEYOND || joint.verdict() == Verdict.UNSETTLED)
                    .forEach(joint -> allowances.between(joint.reels()).ifPresent(allowance -> places
                            .computeIfAbsent(claimWords.allowance(allowance), first -> new ArrayList<>()).add(place(cove, joint))));
        }
        return places.entrySet().stream().map(entry -> words.text("claim.at", entry.getKey(),
                String.join(", ", entry.getValue()), words.numbers().plain(judgement.survey().limits().neighbourSteps(), 2))).toList();
    }

    private String place(CoveJudgement cove, JudgedJoint joint) {
        return words.text("claim.place", cove.cove().id(), words.lengths().first(joint.positionM()),
                words.numbers().steps(joint.difference().orElseThrow().steps()));
    }
}
