package covewalk.verdict.claim;

import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.stretch.Stretch;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Sets what was measured beside what each label claims. */
public final class Claims {

    private static final Comparator<ReelColour> BEST = Comparator.comparing((ReelColour colour) -> !colour.direct())
            .thenComparingDouble(colour -> colour.covariance().uu() + colour.covariance().vv());

    private Claims() {
    }

    /**
     * @param stretches of all coves
     * @return one for each reel whose label claims steps, in the survey's order
     */
    public static List<ReelClaim> of(Survey survey, List<Stretch> stretches) {
        Map<String, List<Stretch>> byReel = stretches.stream()
                .collect(Collectors.groupingBy(stretch -> stretch.placement().reel()));
        return survey.reels().stream().filter(reel -> reel.claimedSteps().isPresent())
                .map(reel -> judged(survey, reel, byReel.getOrDefault(reel.id(), List.of()))).toList();
    }

    private static ReelClaim judged(Survey survey, Reel reel, List<Stretch> stretches) {
        Optional<ClaimCentre> centre = ClaimCentre.of(reel);
        Optional<ReelColour> colour = survey.setUps().stream().flatMap(setUp -> colour(stretches, setUp).stream()).min(BEST);
        if (centre.isEmpty() || colour.isEmpty()) {
            WhyOpen why = colour.isEmpty() ? WhyOpen.NOT_READ : WhyOpen.NO_CENTRE;
            return new ReelClaim(reel, centre, Optional.empty(), Confidence.NONE, ClaimVerdict.NOT_READ, why, ClaimVerdict.NOT_READ);
        }
        return new ClaimCheck(survey.limits(), reel, centre.get(), colour.get()).judged();
    }

    private static Optional<ReelColour> colour(List<Stretch> stretches, SetUp setUp) {
        List<Stretch> own = stretches.stream().filter(stretch -> stretch.setUp().equals(setUp.id())).toList();
        return own.isEmpty() ? Optional.empty() : Optional.of(ReelColour.of(own, setUp));
    }
}
