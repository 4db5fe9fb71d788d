package covewalk.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One visit to one site, as described before and during the walk; the readings are kept apart, in a log.
 *
 * @param setUps the meter's set-ups; the first is the one a reading belongs to when it names none
 * @param claim what a complaint or a warranty claim says, where there is one
 */
public record Survey(Site site, Visit visit, List<SetUp> setUps, Limits limits, List<Reel> reels, List<Cove> coves,
                     Optional<Claim> claim) {

    public Survey {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(visit, "visit");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(claim, "claim");
        setUps = List.copyOf(setUps);
        reels = List.copyOf(reels);
        coves = List.copyOf(coves);
        if (setUps.isEmpty()) {
            throw new IllegalArgumentException("a survey needs at least one set-up of the meter");
        }
    }

    public Optional<Cove> cove(String id) {
        return coves.stream().filter(cove -> cove.id().equals(id)).findFirst();
    }

    public Optional<Reel> reel(String id) {
        return reels.stream().filter(reel -> reel.id().equals(id)).findFirst();
    }

    public Optional<SetUp> setUp(String id) {
        return setUps.stream().filter(setUp -> setUp.id().equals(id)).findFirst();
    }

    /** The set-up of readings that name none. */
    public SetUp firstSetUp() {
        return setUps.get(0);
    }

    /** The same survey judged against other limits. */
    public Survey with(Limits others) {
        return new Survey(site, visit, setUps, others, reels, coves, claim);
    }

    public Survey with(Site other) {
        return new Survey(other, visit, setUps, limits, reels, coves, claim);
    }

    public Survey with(Visit other) {
        return new Survey(site, other, setUps, limits, reels, coves, claim);
    }

    public Survey with(Optional<Claim> other) {
        return new Survey(site, visit, setUps, limits, reels, coves, other);
    }

    public Survey withSetUps(List<SetUp> others) {
        return new Survey(site, visit, others, limits, reels, coves, claim);
    }

    public Survey withReels(List<Reel> others) {
        return new Survey(site, visit, setUps, limits, others, coves, claim);
    }

    public Survey withCoves(List<Cove> others) {
        return new Survey(site, visit, setUps, limits, reels, others, claim);
    }
}
