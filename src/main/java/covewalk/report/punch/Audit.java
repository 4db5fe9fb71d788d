package covewalk.report.punch;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.file.seal.SealRecord;
import covewalk.verdict.Judgement;
import java.util.List;
import java.util.Optional;

/**
 * What a report is made from.
 *
 * @param list with the verdicts it was made from
 * @param log every reading, also those that later ones replace
 * @param warnings what was taken and looks wrong
 * @param seal of the files it rests on; empty where the survey could not be sealed
 */
public record Audit(PunchList list, List<Reading> log, List<Problem> warnings, Optional<SealRecord> seal) {

    public Audit {
        log = List.copyOf(log);
        warnings = List.copyOf(warnings);
    }

    /** Of a first list, its items numbered from 1 in walking order. */
    public Audit(Judgement judgement, List<Reading> log, List<Problem> warnings, Optional<SealRecord> seal) {
        this(PunchList.of(judgement), log, warnings, seal);
    }

    public Judgement judgement() {
        return list.judgement();
    }

    /** The code printed beside a signature; empty where there is none. */
    public String sealCode() {
        return seal.map(SealRecord::code).orElse("");
    }
}
