package covewalk.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.colour.UvPrime;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.PlannedJoint;
import covewalk.verdict.plan.Stop;
import covewalk.verdict.plan.WalkPlan;
import covewalk.words.CautionWords;
import covewalk.words.Words;
import java.util.List;

/** A plan as JSON, for other programs. Positions in m to the millimetre. */
public final class PlanJson {

    private final Words words;

    public PlanJson(Words words) {
        this.words = words;
    }

    /** @return one object, indented, ending in a line feed */
    public String of(WalkPlan plan) {
        ObjectNode all = Json.object().put("survey", plan.survey().site().name());
        all.set("neighbourSteps", Json.number(plan.survey().limits().neighbourSteps(), 4));
        all.set("settlesOffTheLimitSteps", Json.number(WalkPlan.OFF_THE_LIMIT_STEPS, 4));
        all.put("setUp", plan.setUp().id());
        all.set("repeatabilitySteps", Json.number(plan.noise().readingUv() / UvPrime.STEP, 4));
        all.set("scatterSteps", Json.number(plan.noise().scatterUv() / UvPrime.STEP, 4));
        all.put("scatterMeasured", plan.noise().scatterMeasured());
        all.put("readings", plan.readings());
        ArrayNode coves = all.putArray("coves");
        plan.coves().forEach(cove -> coves.add(cove(cove)));
        all.put("caution", new CautionWords(words).headLine());
        return Json.text(all);
    }

    private static ObjectNode cove(CovePlan plan) {
        ObjectNode object = Json.object().put("cove", plan.cove().id()).put("access", plan.access().code());
        object.set("heightM", Json.number(plan.cove().heightM(), 2));
        object.put("readings", plan.readings());
        object.set("minutes", Json.array().add(plan.access().leastMinutes(plan.readings()))
                .add(plan.access().mostMinutes(plan.readings())));
        ArrayNode stops = object.putArray("stops");
        plan.stops().forEach(stop -> stops.add(stop(stop)));
        ArrayNode joints = object.putArray("joints");
        plan.joints().forEach(joint -> joints.add(joint(joint)));
        return object;
    }

    private static ObjectNode stop(Stop stop) {
        ObjectNode object = Json.object().put("role", stop.kind().code());
        object.set("positionM", Json.number(stop.positionM(), 3));
        return object.put("reel", stop.reel()).put("readings", stop.readings());
    }

    private static ObjectNode joint(PlannedJoint joint) {
        ObjectNode object = Json.object();
        object.set("positionM", Json.number(joint.joint().positionM(), 3));
        object.set("reels", Json.texts(List.of(joint.joint().before().reel(), joint.joint().after().reel())));
        object.put("outlook", joint.outlook().code());
        object.set("settlesOffTheLimitSteps", Json.number(joint.settlesSteps(), 4));
        return object;
    }
}
