package covewalk.report;

import covewalk.survey.file.PunchState;
import covewalk.survey.file.PunchStates;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An item that was given a number and is not found any more as an item of its own. Its number stays with it.
 *
 * @param partOf the item that stands for its place too now; empty where nothing is found there
 */
public record GoneItem(PunchState state, OptionalInt partOf) {

    static List<GoneItem> of(PunchStates known, List<PunchItem> items) {
        Set<Integer> found = items.stream().map(PunchItem::number).collect(Collectors.toSet());
        return known.all().stream().filter(state -> !found.contains(state.item()))
                .map(state -> new GoneItem(state, partOf(state, items))).toList();
    }

    private static OptionalInt partOf(PunchState state, List<PunchItem> items) {
        Optional<PunchItem> item = state.place().flatMap(place -> items.stream().filter(each -> !each.alike().isEmpty())
                .filter(each -> each.metresFrom(place).isPresent()).findFirst());
        return item.map(each -> OptionalInt.of(each.number())).orElse(OptionalInt.empty());
    }
}
