package covewalk.survey.file.description;

import covewalk.survey.Claim;
import java.util.Optional;

/** What a complaint or a warranty claim says, in {@code survey.json}. */
final class ClaimEntry {

    private ClaimEntry() {
    }

    static Optional<Claim> read(Fields survey) {
        if (!survey.has("claim")) {
            return Optional.empty();
        }
        Fields claim = survey.object("claim");
        return Optional.of(new Claim(claim.text("symptom"), claim.text("firstNoticed"), claim.text("hoursADay"),
                claim.text("surroundings"), claim.text("controls"), claim.text("piecesKept")));
    }

    static void write(Overlay survey, Optional<Claim> claim) {
        if (claim.isEmpty()) {
            survey.nothing("claim");
            return;
        }
        Claim said = claim.get();
        survey.object("claim", to -> to.text("symptom", said.symptom()).text("firstNoticed", said.firstNoticed())
                .text("hoursADay", said.hoursADay()).text("surroundings", said.surroundings())
                .text("controls", said.controls()).text("piecesKept", said.piecesKept()));
    }
}
