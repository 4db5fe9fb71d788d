package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Part;
import covewalk.app.forms.Writing;
import covewalk.survey.Claim;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a complaint or a warranty claim says, in the claimant's words. */
final class ClaimKind implements Kind<Claim> {

    private static final Claim NOTHING = new Claim("", "", "", "", "", "");

    static final Part<Claim> PART = Part.always("claim", survey -> survey.claim().orElse(NOTHING),
            (survey, claim) -> survey.with(claim.equals(NOTHING) ? Optional.empty() : Optional.of(claim)));

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("symptom"), Ask.typed("firstNoticed"), Ask.typed("hoursADay"), Ask.typed("surroundings"),
                Ask.typed("controls"), Ask.typed("piecesKept"));
    }

    @Override
    public Map<String, String> texts(Claim claim, Writing writing) {
        return Map.of("symptom", claim.symptom(), "firstNoticed", claim.firstNoticed(), "hoursADay", claim.hoursADay(),
                "surroundings", claim.surroundings(), "controls", claim.controls(), "piecesKept", claim.piecesKept());
    }

    @Override
    public Claim read(Answers answers, Claim before) {
        return new Claim(answers.text("symptom", before.symptom()), answers.text("firstNoticed", before.firstNoticed()),
                answers.text("hoursADay", before.hoursADay()), answers.text("surroundings", before.surroundings()),
                answers.text("controls", before.controls()), answers.text("piecesKept", before.piecesKept()));
    }
}
