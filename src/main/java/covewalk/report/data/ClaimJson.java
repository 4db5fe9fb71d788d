package covewalk.report.data;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.verdict.claim.ClaimAllowance;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.claim.WhyOpen;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Claims as JSON: steps to four decimals, confidences cut to six, nulls for what was not measured. */
final class ClaimJson {

    private ClaimJson() {
    }

    static ArrayNode of(List<ReelClaim> claims) {
        ArrayNode array = Json.array();
        claims.forEach(claim -> array.add(claim(claim)));
        return array;
    }

    private static ObjectNode claim(ReelClaim claim) {
        ObjectNode object = Json.object().put("reel", claim.reel().id());
        object.set("claimedSteps", Json.number(claim.claimedSteps(), 4));
        object.put("centreFrom", claim.centre().map(centre -> centre.nominal()
                .map(nominal -> "ANSI C78.377-" + nominal.edition().years() + ", " + nominal.nominalK() + " K").orElse("label")).orElse(null));
        object.set("steps", figure(claim, ReelClaim.Measured::steps));
        object.set("standardUncertaintySteps", figure(claim, ReelClaim.Measured::standardUncertaintySteps));
        boolean read = claim.verdict() != ClaimVerdict.NOT_READ;
        object.set("confidenceBeyond", read ? Json.confidence(claim.confidence().beyond()) : null);
        object.set("confidenceWithin", read ? Json.confidence(claim.confidence().within()) : null);
        object.put("claim", claim.verdict().code());
        object.put("whyOpen", claim.why() == WhyOpen.NONE ? "" : claim.why().code());
        object.put("inNominalQuadrangle", inQuadrangle(claim.inQuadrangle()));
        object.put("varies", claim.measured().map(ReelClaim.Measured::varies).orElse(null));
        return object.put("setUp", claim.measured().map(ReelClaim.Measured::setUp).orElse(null));
    }

    private static String inQuadrangle(ClaimVerdict verdict) {
        return verdict == ClaimVerdict.SHOWN ? "in" : verdict == ClaimVerdict.NOT_SHOWN ? "out" : verdict.code();
    }

    private static JsonNode figure(ReelClaim claim, ToDoubleFunction<ReelClaim.Measured> figure) {
        return Json.number(claim.measured().map(measured -> OptionalDouble.of(figure.applyAsDouble(measured)))
                .orElse(OptionalDouble.empty()), 4);
    }

    /** Steps that two claims allow; null where one of the two reels claims nothing. */
    static JsonNode allowance(Optional<ClaimAllowance> allowance) {
        return Json.number(allowance.map(both -> OptionalDouble.of(both.steps())).orElse(OptionalDouble.empty()), 4);
    }
}
