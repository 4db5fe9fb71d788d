package covewalk.verdict.plan;

import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.survey.Joint;
import covewalk.survey.Placement;
import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.plan.CovePlan.WhyNothing;
import covewalk.verdict.plan.PlannedJoint.Outlook;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws up the plan: stations for each placement, the fewest that do for both of its joints. */
final class Planner {

    private final Judgement judged;
    private final Survey survey;
    private final SetUp setUp;
    private final ReelsById reels;
    private final ExpectedNoise noise;

    Planner(Judgement judged, SetUp setUp) {
        this.judged = judged;
        this.survey = judged.survey();
        this.setUp = setUp;
        this.reels = new ReelsById(survey);
        this.noise = ExpectedNoise.of(setUp, judged.coves().stream().flatMap(cove -> cove.stretches().stream()).toList());
    }

    /** Twice: how well the walk will know its own noise depends on how many stations it has. */
    WalkPlan plan() {
        Demand first = demand(Double.POSITIVE_INFINITY);
        Demand second = demand(degrees(first));
        return new WalkPlan(survey, setUp, noise, judged.coves().stream().map(cove -> cove(cove, second)).toList());
    }

    private Demand demand(double degrees) {
        return new Demand(survey.limits(), judged.coves().stream().mapToInt(cove -> cove.joints().size()).sum(), degrees);
    }

    private double degrees(Demand demand) {
        return judged.coves().stream().flatMap(cove -> layouts(cove, demand).values().stream())
                .mapToInt(layout -> layout.positions().size() - 1).sum();
    }

    private CovePlan cove(CoveJudgement cove, Demand demand) {
        Map<Placement, Layout> layouts = layouts(cove, demand);
        List<Stop> stops = new Walk(cove, setUp, layouts, toRead(cove)).stops();
        List<PlannedJoint> joints = cove.joints().stream().map(joint -> joint(joint, cove, layouts, demand)).toList();
        return new CovePlan(cove.cove(), Access.of(cove.cove()), stops, joints,
                stops.isEmpty() ? Optional.of(whyNothing(cove, joints, layouts)) : Optional.empty());
    }

    private static WhyNothing whyNothing(CoveJudgement cove, List<PlannedJoint> joints, Map<Placement, Layout> layouts) {
        if (cove.cove().placements().isEmpty()) {
            return WhyNothing.NO_REELS;
        }
        if (joints.isEmpty()) {
            return layouts.isEmpty() ? WhyNothing.TOO_SHORT : WhyNothing.SETTLED;
        }
        List<Outlook> open = joints.stream().map(PlannedJoint::outlook).filter(outlook -> outlook != Outlook.SETTLED).toList();
        if (open.isEmpty()) {
            return WhyNothing.SETTLED;
        }
        return open.stream().allMatch(outlook -> outlook == Outlook.TOO_SHORT) ? WhyNothing.TOO_SHORT : WhyNothing.READ;
    }

    /** Placements with a joint that is open still; where there is no joint, the one there is. */
    private static List<Placement> toRead(CoveJudgement cove) {
        if (cove.joints().isEmpty()) {
            return cove.stations().isEmpty() ? cove.cove().placements() : List.of();
        }
        return cove.cove().placements().stream().filter(placement -> cove.joints().stream()
                .anyMatch(joint -> !settled(joint) && touches(joint.joint(), placement))).toList();
    }

    private static boolean settled(JudgedJoint joint) {
        return joint.verdict() == Verdict.BEYOND || joint.verdict() == Verdict.WITHIN;
    }

    private static boolean touches(Joint joint, Placement placement) {
        return joint.before() == placement || joint.after() == placement;
    }

    private Map<Placement, Layout> layouts(CoveJudgement cove, Demand demand) {
        Map<Placement, Layout> layouts = new IdentityHashMap<>();
        for (Placement placement : cove.cove().placements()) {
            double wanted = cove.joints().stream().filter(joint -> touches(joint.joint(), placement))
                    .mapToDouble(joint -> varianceWanted(joint.joint(), cove, demand)).min().orElse(Double.POSITIVE_INFINITY);
            List<Layout> possible = Layout.of(placement, setUp);
            possible.stream().filter(layout -> layout.variance(noise) <= wanted).findFirst()
                    .or(() -> possible.stream().reduce((one, next) -> next))
                    .ifPresent(layout -> layouts.put(placement, layout));
        }
        return layouts;
    }

    /** Of each side. What unlike spectra add cannot be read away: a hopeless joint is read as if its reels were alike. */
    private double varianceWanted(Joint joint, CoveJudgement cove, Demand demand) {
        double sd = demand.sdWanted() / stepsPerUv(cove);
        double left = sd * sd - unlike(joint);
        return (left > 0 ? left : sd * sd) / 2;
    }

    private double unlike(Joint joint) {
        Optional<Reel> before = reels.find(joint.before().reel());
        Optional<Reel> after = reels.find(joint.after().reel());
        boolean like = before.isPresent() && after.isPresent()
                && (before.get() == after.get() || !before.get().mayBeUnlike(after.get()));
        return like ? 0 : setUp.unlikeUv() * setUp.unlikeUv();
    }

    /** In the direction in which steps are shortest. */
    private double stepsPerUv(CoveJudgement cove) {
        StepPlane plane = judged.planeOf(cove);
        return plane.carry(Covariance.isotropic(1)).eigen().larger();
    }

    private PlannedJoint joint(JudgedJoint judgedJoint, CoveJudgement cove, Map<Placement, Layout> layouts, Demand demand) {
        Joint joint = judgedJoint.joint();
        if (settled(judgedJoint)) {
            return new PlannedJoint(joint, Outlook.SETTLED, OptionalDouble.empty());
        }
        Layout before = layouts.get(joint.before());
        Layout after = layouts.get(joint.after());
        if (before == null || after == null) {
            return new PlannedJoint(joint, Outlook.TOO_SHORT, OptionalDouble.empty());
        }
        double read = before.variance(noise) + after.variance(noise);
        double sd = stepsPerUv(cove) * Math.sqrt(read + unlike(joint));
        Outlook outlook = sd <= demand.sdWanted() ? Outlook.SETTLES
                : stepsPerUv(cove) * Math.sqrt(read) <= demand.sdWanted() ? Outlook.UNLIKE_REELS : Outlook.TOO_COARSE;
        return new PlannedJoint(joint, outlook, OptionalDouble.of(demand.settles(sd)));
    }
}
