package covewalk.survey;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The reels of a survey by their ids: a survey may hold some ten thousand. */
public final class ReelsById {

    private final Map<String, Reel> reels = new HashMap<>();

    /** Where an id is there twice the first reel counts. */
    public ReelsById(Survey survey) {
        survey.reels().forEach(reel -> reels.putIfAbsent(reel.id(), reel));
    }

    public Optional<Reel> find(String id) {
        return Optional.ofNullable(reels.get(id));
    }
}
