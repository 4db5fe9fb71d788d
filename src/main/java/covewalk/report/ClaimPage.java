package covewalk.report;

import covewalk.verdict.Judgement;
import covewalk.verdict.claim.ReelClaim;
import covewalk.words.ClaimWords;
import covewalk.words.Words;
import java.util.List;

/**
 * The labels' claims as they are printed.
 *
 * @param meaning what the words of the verdicts mean
 * @param rows a reel each: label, claim, measured, verdict, why it is open, nominal quadrangle
 */
record ClaimPage(String meaning, List<List<String>> rows) {

    static ClaimPage of(Judgement judgement, Words words) {
        ClaimWords claims = new ClaimWords(words);
        return new ClaimPage(words.text("claim.meaning"), judgement.claims().stream().map(claim -> row(claim, claims)).toList());
    }

    private static List<String> row(ReelClaim claim, ClaimWords words) {
        return List.of(words.reel(claim), words.claim(claim), words.measured(claim), words.verdict(claim),
                words.why(claim.why()), words.inQuadrangle(claim.inQuadrangle()));
    }
}
