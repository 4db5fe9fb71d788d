package covewalk.survey;

/** What a complaint or a warranty claim says, each in the claimant's words; any may be empty. */
public record Claim(String symptom, String firstNoticed, String hoursADay, String surroundings, String controls,
                    String piecesKept) {
}
