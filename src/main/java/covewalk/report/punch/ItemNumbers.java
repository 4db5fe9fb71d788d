package covewalk.report.punch;

import covewalk.survey.file.punch.PunchState;
import covewalk.survey.file.punch.PunchStates;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Gives items their numbers: a fault that had one keeps it, the nearest first where several lie close together; a new
 * one has the next that nobody ever had, in walking order.
 */
final class ItemNumbers {

    private final PunchStates known;
    /** By what must be the same, so that a long list is not compared with all of another. */
    private final Map<String, List<PunchState>> byCove;

    ItemNumbers(PunchStates known) {
        this.known = known;
        this.byCove = known.all().stream().filter(state -> state.place().isPresent())
                .collect(Collectors.groupingBy(state -> state.place().orElseThrow().cove()));
    }

    /** An item that may be the one a number stands for. */
    private record Match(int index, PunchState state, double distanceM) {
    }

    List<PunchItem> of(List<PunchItem> found) {
        List<Optional<PunchState>> states = new ArrayList<>();
        found.forEach(item -> states.add(Optional.empty()));
        Set<Integer> taken = new HashSet<>();
        for (Match match : matches(found)) {
            if (states.get(match.index()).isEmpty() && taken.add(match.state().item())) {
                states.set(match.index(), Optional.of(match.state()));
            }
        }
        List<PunchItem> numbered = new ArrayList<>();
        int next = known.next();
        for (int i = 0; i < found.size(); i++) {
            PunchItem item = found.get(i);
            boolean isNew = states.get(i).isEmpty();
            numbered.add(item.as(isNew ? new PunchState(next++, Optional.of(item.place()), Map.of()) : states.get(i).get()));
        }
        return numbered;
    }

    private List<Match> matches(List<PunchItem> found) {
        List<Match> matches = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            for (PunchState state : byCove.getOrDefault(found.get(i).place().cove(), List.of())) {
                OptionalDouble distance = found.get(i).metresFrom(state.place().orElseThrow());
                if (distance.isPresent()) {
                    matches.add(new Match(i, state, distance.getAsDouble()));
                }
            }
        }
        matches.sort(Comparator.comparingDouble(Match::distanceM).thenComparing(match -> match.state().item())
                .thenComparing(Match::index));
        return matches;
    }

}
