package covewalk.app.reels;

import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.UvPrime;
import covewalk.survey.Placement;
import covewalk.verdict.Fault;
import covewalk.verdict.claim.ReelClaim;
import covewalk.words.ClaimWords;
import java.util.ArrayList;
import java.util.List;

/** What is known of a reel, in words. */
final class FactWords {

    private final Texts texts;
    private final Writing writing;
    private final ClaimWords claims;

    FactWords(Texts texts, Writing writing) {
        this.texts = texts;
        this.writing = writing;
        claims = new ClaimWords(texts.words());
    }

    String lies(ReelFacts.Lies where) {
        Placement placement = where.placement();
        return texts.get("lies.at", where.cove().id(), writing.length(placement.fromM()), writing.length(placement.toM()),
                texts.get("known." + placement.knownFrom().code()));
    }

    String measured(ReelFacts.Measured measured) {
        UvPrime colour = measured.stretch().line().at(measured.stretch().middleM());
        String cct = ColourTemperature.of(colour) instanceof CctDuv white
                ? texts.get("measured.cct", texts.numbers().fixed(white.cctK(), 0), texts.numbers().fixed(white.duv(), 4)) : "";
        return texts.get("measured.at", measured.cove().id(), writing.length(measured.stretch().fromM()),
                writing.length(measured.stretch().toM()), texts.numbers().fixed(colour.u(), 4), texts.numbers().fixed(colour.v(), 4), cct).strip();
    }

    /** What the label claims, what was measured, and whether it is shown; line by line. */
    List<String> claim(ReelClaim claim) {
        List<String> lines = new ArrayList<>(List.of(texts.get("claim.claims", claims.claim(claim)),
                texts.get("claim.measured", claims.measured(claim)), texts.get("claim.verdict", claims.verdict(claim))));
        String why = claims.why(claim.why());
        if (!why.isEmpty()) {
            lines.add(texts.get("claim.why", why));
        }
        lines.add(texts.get("claim.class", claims.inQuadrangle(claim.inQuadrangle())));
        return lines;
    }

    String fault(ReelFacts.Part part) {
        Fault fault = part.fault();
        return texts.get("fault.at", texts.words().kind(fault.kind()), part.cove().cove().id(), writing.length(fault.positionM()),
                texts.numbers().steps(fault.difference().steps()), texts.numbers().plain(fault.limitSteps(), 2), String.join(" / ", fault.reels()));
    }
}
