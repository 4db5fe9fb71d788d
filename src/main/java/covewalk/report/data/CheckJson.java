package covewalk.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.Limits;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.Hint;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import covewalk.verdict.claim.Allowances;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Stretch;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The verdicts as JSON, for other programs. Positions in m to the millimetre, steps to four decimals, u' and v' to six,
 * confidences cut to six. A joint that was not read has nulls for what was not measured.
 */
public final class CheckJson {

    /** @return one object, indented, ending in a line feed */
    public String of(Judgement judgement) {
        Limits limits = judgement.survey().limits();
        ObjectNode all = Json.object();
        all.put("survey", judgement.survey().site().name());
        all.set("neighbourSteps", Json.number(limits.neighbourSteps(), 4));
        ArrayNode coves = all.putArray("coves");
        judgement.coves().forEach(cove -> coves.add(cove(judgement, cove)));
        all.set("targetSteps", Json.number(limits.targetSteps(), 4));
        all.put("setBy", limits.setBy());
        all.put("stepRule", limits.stepRule().code());
        all.set("errorRate", Json.number(limits.errorRate(), 6));
        all.put("errorPer", limits.errorPer().code());
        all.set("counts", counts(judgement));
        all.set("notes", notes(judgement.notes()));
        ArrayNode evidence = all.putArray("evidence");
        judgement.notes().forEach(note -> evidence.add(evidence(note)));
        all.set("claims", ClaimJson.of(judgement.claims()));
        return Json.text(all);
    }

    private static ObjectNode cove(Judgement judgement, CoveJudgement cove) {
        ObjectNode object = Json.object();
        object.put("cove", cove.cove().id());
        object.put("stations", cove.stations().size());
        object.put("readings", cove.readings());
        ArrayNode joints = object.putArray("joints");
        Allowances allowances = new Allowances(judgement.survey());
        cove.joints().forEach(joint -> joints.add(joint(joint, cove.cove().lengthM())
                .set("claimsAllowSteps", ClaimJson.allowance(allowances.between(joint.reels())))));
        ArrayNode stretches = object.putArray("stretches");
        cove.stretches().forEach(stretch -> stretches.add(stretch(stretch, judgement.planeOf(cove).steps(
                stretch.line().uPerM(), stretch.line().vPerM()))));
        ArrayNode faults = object.putArray("faults");
        cove.faults().forEach(fault -> faults.add(fault(fault)));
        object.put("stepsCountedBy", judgement.planeOf(cove).name());
        return object;
    }

    private static ObjectNode joint(JudgedJoint joint, double coveLengthM) {
        ObjectNode object = Json.object();
        object.set("positionM", Json.number(joint.positionM(), 3));
        object.set("reels", Json.texts(joint.reels()));
        measured(object, joint.difference());
        if (joint.verdict() == Verdict.NOT_READ) {
            object.putNull("confidenceBeyond").putNull("confidenceWithin");
        } else {
            object.set("confidenceBeyond", Json.confidence(joint.confidence().beyond()));
            object.set("confidenceWithin", Json.confidence(joint.confidence().within()));
        }
        object.put("verdict", joint.verdict().code());
        object.set("readingsToSettle", Json.whole(joint.settle().readings()));
        object.put("towards", joint.difference().map(d -> d.towards().words()).orElse(null));
        object.set("luxRatio", Json.number(joint.difference().map(Difference::luxRatio).orElse(OptionalDouble.empty()), 4));
        object.put("rounds", joint.rounds());
        object.put("whyNot", whyNot(joint.settle()));
        object.put("setUp", joint.setUp());
        object.set("gapM", Json.number(joint.joint().gapM(coveLengthM), 3));
        object.put("restsOnDeclared", joint.notes().stream().anyMatch(note -> note.kind() == Note.Kind.RESTS_ON_DECLARED));
        object.set("notes", notes(joint.notes()));
        return object;
    }

    private static void measured(ObjectNode object, Optional<Difference> measured) {
        if (measured.isEmpty()) {
            List.of("steps", "standardUncertaintySteps", "deltaUPrime", "deltaVPrime", "deltaCctK", "deltaDuv")
                    .forEach(object::putNull);
            return;
        }
        Difference difference = measured.get();
        object.set("steps", Json.number(difference.steps(), 4));
        object.set("standardUncertaintySteps", Json.number(difference.standardUncertaintySteps(), 4));
        object.set("deltaUPrime", Json.number(difference.deltaUPrime(), 6));
        object.set("deltaVPrime", Json.number(difference.deltaVPrime(), 6));
        object.set("deltaCctK", Json.number(difference.deltaCctK(), 1));
        object.set("deltaDuv", Json.number(difference.deltaDuv(), 6));
    }

    private static ObjectNode stretch(Stretch stretch, double slopeStepsPerM) {
        ObjectNode object = Json.object();
        object.set("fromM", Json.number(stretch.fromM(), 3));
        object.set("toM", Json.number(stretch.toM(), 3));
        object.set("uPrime", Json.number(stretch.line().at(stretch.middleM()).u(), 6));
        object.set("vPrime", Json.number(stretch.line().at(stretch.middleM()).v(), 6));
        object.set("slopeStepsPerM", Json.number(slopeStepsPerM, 4));
        object.put("stations", stretch.stations().size());
        object.put("reel", stretch.placement().reel());
        object.put("setUp", stretch.setUp());
        return object;
    }

    private static ObjectNode fault(Fault fault) {
        ObjectNode object = Json.object();
        object.put("kind", fault.kind().code());
        object.set("positionM", Json.number(fault.positionM(), 3));
        object.set("rangeM", Json.array().add(Json.number(fault.fromM(), 3)).add(Json.number(fault.toM(), 3)));
        object.set("reels", Json.texts(fault.reels()));
        object.set("steps", Json.number(fault.difference().steps(), 4));
        object.set("confidenceBeyond", Json.confidence(fault.confidence().beyond()));
        object.put("verdict", fault.verdict().code());
        object.put("hint", fault.hint() == Hint.NONE ? "" : fault.hint().code());
        object.set("standardUncertaintySteps", Json.number(fault.difference().standardUncertaintySteps(), 4));
        object.set("confidenceWithin", Json.confidence(fault.confidence().within()));
        object.set("limitSteps", Json.number(fault.limitSteps(), 4));
        object.put("towards", fault.difference().towards().words());
        object.set("readingsToSettle", Json.whole(fault.settle().readings()));
        object.put("whyNot", whyNot(fault.settle()));
        object.set("notes", notes(fault.notes()));
        return object;
    }

    private static ObjectNode counts(Judgement judgement) {
        return Json.object().put("beyond", judgement.count(Verdict.BEYOND)).put("unsettled", judgement.count(Verdict.UNSETTLED))
                .put("within", judgement.count(Verdict.WITHIN)).put("notRead", judgement.count(Verdict.NOT_READ));
    }

    private static ArrayNode notes(List<Note> notes) {
        return Json.texts(notes.stream().map(note -> code(note.kind())).toList());
    }

    /** A note with what its sentence says, in that order. */
    private static ObjectNode evidence(Note note) {
        ObjectNode object = Json.object().put("note", code(note.kind()));
        object.set("details", Json.texts(note.details()));
        return object;
    }

    /** Empty where more readings would settle it. */
    static String whyNot(Settle settle) {
        return settle.whyNot() == Settle.WhyNot.NONE ? "" : code(settle.whyNot());
    }

    private static String code(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
