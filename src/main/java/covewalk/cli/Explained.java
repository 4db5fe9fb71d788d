package covewalk.cli;

import covewalk.report.text.Explanation;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the cove whose place is to be explained, and explains it. */
final class Explained {

    private Explained() {
    }

    static String of(Judgement judgement, Optional<String> coveId, double positionM, Words words)
            throws CannotBeDone {
        CoveJudgement cove = cove(judgement.coves(), coveId);
        if (!(positionM >= 0 && positionM <= cove.cove().lengthM())) {
            throw CannotBeDone.because(Sentences.of("explain.outside", cove.cove().id(),
                    words.numbers().metres(cove.cove().lengthM())));
        }
        return new Explanation(words).of(judgement, cove, positionM)
                .orElseThrow(() -> CannotBeDone.because(Sentences.of("explain.nothing", cove.cove().id())));
    }

    private static CoveJudgement cove(List<CoveJudgement> coves, Optional<String> id) throws CannotBeDone {
        String known = coves.stream().map(cove -> cove.cove().id()).collect(Collectors.joining(", "));
        if (id.isEmpty() && coves.size() != 1) {
            throw CannotBeDone.because(Sentences.of("explain.which-cove", known));
        }
        Optional<CoveJudgement> found = coves.stream()
                .filter(cove -> id.isEmpty() || cove.cove().id().equals(id.get())).findFirst();
        if (found.isEmpty()) {
            throw CannotBeDone.because(Sentences.of("explain.no-such-cove", id.get(), known));
        }
        return found.get();
    }
}
