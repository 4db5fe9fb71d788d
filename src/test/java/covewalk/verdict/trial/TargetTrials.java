package covewalk.verdict.trial;

import covewalk.colour.UvPrime;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Single reels that lie truly at the limit from the cove's target, or from the centre of their own claim, read with meters
 * each of which errs by an amount of its own: as far as is stated for it, the same at every station.
 */
final class TargetTrials {

    /** What {@link TrueCove} states for the meter's standard uncertainty, in steps. */
    private static final double METER_STEPS = 0.0015 / UvPrime.STEP;
    private static final double LIMIT = 4;

    private TargetTrials() {
    }

    static List<JointCase> atTheLimit() {
        return List.of(reel("one reading", 1, 1, 0), reel("three readings at one place", 1, 3, Math.PI / 3),
                reel("four stations, scatter 0.4 step", 4, 1, Math.PI / 2), reel("ten stations, scatter 0.4 step", 10, 1, 2));
    }

    private static JointCase reel(String name, int stations, int readings, double angle) {
        return new JointCase(name, cove -> {
            cove.whiteJitterSteps = METER_STEPS; // shifts all that is read: that is how a meter errs
            cove.scatterSteps = stations > 1 ? 0.4 : 0;
            cove.targetSteps = OptionalDouble.of(LIMIT);
            cove.claimedSteps = OptionalDouble.of(LIMIT);
        }, cove -> {
            cove.reel(0, 5);
            for (int i = 0; i < stations; i++) {
                cove.station(0.25 + 4.5 * i / Math.max(1, stations - 1), LIMIT, angle, readings, 1);
            }
        });
    }

    static Shares fromTarget(JointCase reel, int trials) {
        return Shares.of(trials, seed -> List.of(fromTarget(reel.cove(seed).judged())));
    }

    private static Verdict fromTarget(CoveJudgement cove) {
        return cove.faults().stream().filter(fault -> fault.kind() == FaultKind.OFF_TARGET).map(Fault::verdict).findFirst()
                .orElse(Verdict.WITHIN);
    }

    static Shares fromClaim(JointCase reel, int trials) {
        return Shares.of(trials, seed -> List.of(verdict(reel.cove(seed).judgement().claims().get(0).verdict())));
    }

    private static Verdict verdict(ClaimVerdict claim) {
        return switch (claim) {
            case SHOWN -> Verdict.WITHIN;
            case NOT_SHOWN -> Verdict.BEYOND;
            case UNSETTLED, NOT_READ -> Verdict.UNSETTLED;
        };
    }
}
