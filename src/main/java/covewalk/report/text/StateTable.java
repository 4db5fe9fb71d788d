package covewalk.report.text;

import covewalk.report.punch.GoneItem;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.StateWords;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchStage;
import covewalk.survey.file.punch.PunchState;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** How the items of a punch list stand, for a terminal: those found in walking order, then those no longer found. */
public final class StateTable {

    private static final int WIDTH = 100;
    private static final int LONGEST = 24;
    private static final Set<Integer> FIGURES = Set.of(0);

    private final Words words;
    private final StateWords states;

    public StateTable(Words words) {
        this.words = words;
        this.states = new StateWords(words);
    }

    /** Lines, each with its end; the last one counts. */
    public String of(PunchList list) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(Stream.of("item", "where", "kind", "reels", "found", "state", "responsible", "due")
                .map(column -> words.text("state.column." + column)).toList());
        list.items().forEach(item -> rows.add(row(item.state(), states.found(item))));
        list.gone().forEach(item -> rows.add(row(item.state(), states.found(item))));
        List<String> aligned = PlainText.columns(rows, FIGURES);
        StringBuilder text = new StringBuilder();
        if (rows.size() > 1) {
            text.append(aligned.get(0)).append('\n');
        }
        int line = 1;
        for (PunchItem item : list.items()) {
            text.append(aligned.get(line++)).append('\n').append(details(item.state(), states.before(list, item).stream()));
        }
        for (GoneItem item : list.gone()) {
            text.append(aligned.get(line++)).append('\n').append(details(item.state(),
                    Stream.concat(states.before(list, item).stream(), states.now(list, item).stream())));
        }
        return text.append(counts(list)).append('\n').toString();
    }

    private List<String> row(PunchState state, String found) {
        return Stream.of(words.numbers().fixed(state.item(), 0), states.where(state), states.kind(state), states.reels(state), found,
                states.stage(state), state.text(PunchColumn.RESPONSIBLE), state.text(PunchColumn.DUE))
                .map(cell -> Shortened.of(PlainText.calm(cell), LONGEST)).toList();
    }

    /** What has no column, below the item. */
    private String details(PunchState state, Stream<String> visits) {
        List<String> recorded = states.recorded(new PunchState(state.item(), state.place(), withoutColumns(state)));
        Stream<String> all = Stream.concat(recorded.isEmpty() ? Stream.empty() : Stream.of(String.join("; ", recorded)), visits);
        StringBuilder text = new StringBuilder();
        all.forEach(sentence -> PlainText.wrapped("        " + sentence, WIDTH, 8)
                .forEach(line -> text.append(" ".repeat(8)).append(line.strip()).append('\n')));
        return text.toString();
    }

    private static Map<PunchColumn, String> withoutColumns(PunchState state) {
        Map<PunchColumn, String> rest = new EnumMap<>(PunchColumn.class);
        rest.putAll(state.cells());
        rest.remove(PunchColumn.RESPONSIBLE);
        rest.remove(PunchColumn.DUE);
        return rest;
    }

    private String counts(PunchList list) {
        return words.text("state.counts", count(list.items().size() + list.gone().size()), count(list, PunchStage.OPEN),
                count(list, PunchStage.DONE), count(list, PunchStage.REINSPECTED), count(list, PunchStage.ACCEPTED),
                count(list.gone().stream().filter(GoneItem::read).count())) + notRead(list);
    }

    private String notRead(PunchList list) {
        long notRead = list.gone().stream().filter(item -> !item.read()).count();
        return notRead == 0 ? "" : words.text("state.counts.not-read", count(notRead));
    }

    private String count(PunchList list, PunchStage stage) {
        return count(Stream.concat(list.items().stream().map(PunchItem::state), list.gone().stream().map(GoneItem::state))
                .filter(state -> state.stage() == stage).count());
    }

    private String count(long count) {
        return words.numbers().fixed(count, 0);
    }
}
