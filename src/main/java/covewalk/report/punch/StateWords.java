package covewalk.report.punch;

import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchState;
import covewalk.verdict.FaultKind;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How items stand, in words: what people recorded, what is found now, and what was found before. */
public final class StateWords {

    private static final int LONGEST = 200;

    private final Words words;

    public StateWords(Words words) {
        this.words = words;
    }

    public String stage(PunchState state) {
        return words.text("state." + state.stage().code());
    }

    public String found(PunchItem item) {
        return words.verdict(item.fault().verdict());
    }

    public String found(GoneItem item) {
        return item.partOf().isPresent() ? words.text("state.part-of", words.numbers().fixed(item.partOf().getAsInt(), 0))
                : words.text(item.read() ? "state.gone" : "state.not-read");
    }

    /** As "clause 2.3", "done 2026-11-30 KM": what is recorded, in its order. */
    public List<String> recorded(PunchState state) {
        return PunchColumn.STATE.stream().filter(column -> !state.text(column).isEmpty())
                .map(column -> words.text("state.label", words.text("state.label." + column.code()), recorded(state, column))).toList();
    }

    public String recorded(PunchState state, PunchColumn column) {
        return Shortened.of(state.text(column), LONGEST);
    }

    /** As "C1 at 5.00 m"; says so where nobody noted the place. */
    public String where(PunchState state) {
        return state.place().map(place -> words.text("state.where", Shortened.of(place.cove(), LONGEST),
                words.lengths().first(place.positionM()))).orElseGet(() -> words.text("state.no-place"));
    }

    public String kind(PunchState state) {
        return state.place().flatMap(place -> FaultKind.of(place.kind())).map(words::kind)
                .orElseGet(() -> state.place().map(PunchPlace::kind).orElse(""));
    }

    public String reels(PunchState state) {
        return state.place().map(place -> Shortened.of(place.reels(), LONGEST)).orElse("");
    }

    /** What the visit before found at the item's place; nothing where this visit follows none. */
    public Optional<String> before(PunchList list, PunchItem item) {
        return before(list, item.place());
    }

    /** What the visit before found at a place, whether it is an item or not; nothing where this visit follows none. */
    public Optional<String> before(PunchList list, PunchPlace place) {
        return list.before().map(visit -> PlaceThen.in(visit.judgement(), place)
                .map(then -> words.text("retest.before", date(visit), figures(then)))
                .or(() -> PlaceThen.ofOtherReels(visit.judgement(), place).map(other ->
                        words.text("retest.before.other-reels", date(visit), Shortened.of(other.reels(), LONGEST), figures(other.there()))))
                .orElseGet(() -> words.text("retest.before.none", date(visit))));
    }

    /** What is found now at the place of an item that is gone; nothing where nobody noted the place. */
    public Optional<String> now(PunchList list, GoneItem item) {
        return item.state().place().map(place -> list.now(item).map(then -> words.text("retest.now", figures(then)))
                .or(() -> PlaceThen.ofOtherReels(list.judgement(), place).map(other ->
                        words.text("retest.now.other-reels", Shortened.of(other.reels(), LONGEST), figures(other.there()))))
                .orElseGet(() -> words.text(!item.read() ? "retest.now.not-read" : place.kind().equals(FaultKind.JOINT.code()) ? "retest.now.no-joint" : "retest.now.nothing")));
    }

    /** What the visit before found at the place of an item that is gone. */
    public Optional<String> before(PunchList list, GoneItem item) {
        return list.before().flatMap(visit -> item.state().place().flatMap(place -> PlaceThen.in(visit.judgement(), place))
                .map(then -> words.text("retest.before", date(visit), figures(then))));
    }

    /** A gone item in a line: its place, what is found there now and was before, and what is recorded. */
    public String inShort(PunchList list, GoneItem item) {
        PunchState state = item.state();
        String place = words.text("state.item", words.numbers().fixed(state.item(), 0), where(state), kind(state), reels(state), found(item));
        String recorded = Stream.concat(Stream.of(stage(state)), recorded(state).stream()).collect(Collectors.joining("; "));
        return Stream.of(Stream.of(place), before(list, item).stream(), now(list, item).stream(), Stream.of(words.text("state.recorded", recorded)))
                .flatMap(part -> part).collect(Collectors.joining(" "));
    }

    private String date(EarlierVisit visit) {
        return visit.date().isEmpty() ? words.text("page.no-date") : visit.date();
    }

    private String figures(PlaceThen then) {
        return then.difference().map(difference -> words.text("retest.figures", words.numbers().steps(difference.steps()),
                words.numbers().steps(difference.standardUncertaintySteps()), words.verdict(then.verdict()),
                words.numbers().plain(then.limitSteps(), 2))).orElseGet(() -> words.verdict(then.verdict()));
    }
}
