package covewalk.report.data;

import covewalk.report.punch.CommonReels;
import covewalk.report.punch.EarlierVisit;
import covewalk.report.punch.GoneItem;
import covewalk.report.punch.PlaceThen;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.PunchWords;
import covewalk.survey.Feed;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchState;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.limit.Verdict;
import covewalk.words.NoteWords;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The punch list as a table, one item a row. */
public final class PunchCsv {

    private static final List<String> ITEM = List.of("item", "cove", "place", "kind", "verdict", "position_m",
            "position_ft_in", "from_m", "to_m", "datum", "reel_before", "reel_after");
    private static final List<String> LABEL = List.of("maker", "product", "nominal_cct", "bin", "lot", "serial", "made", "gtin");
    private static final List<String> SUMS = List.of("steps", "standard_uncertainty_steps", "limit_steps", "limit_set_by",
            "step_rule", "delta_cct_k", "delta_duv", "towards", "lux_ratio", "confidence_beyond", "confidence_within");
    private static final List<String> ACTION = List.of("suspected", "check_first", "to_do", "readings_to_settle", "why_not",
            "priority", "priority_reason", "height_m", "feed_at_m", "driver", "circuit", "cautions", "stands_also_for", "corrected");
    private static final List<String> BEFORE = List.of("number_fixed", "state", "before_visited", "before_verdict", "before_steps",
            "before_standard_uncertainty_steps");

    private static final String NO_LONGER_FOUND = "no-longer-found";

    private final Words words;
    private final PunchWords punch;
    private final CsvTable table = new CsvTable();

    public PunchCsv(Words words) {
        this.words = words;
        this.punch = new PunchWords(words);
    }

    public String of(PunchList list) {
        Limits limits = list.judgement().survey().limits();
        ITEM.forEach(table::text);
        LABEL.forEach(field -> table.text("before_" + field));
        LABEL.forEach(field -> table.text("after_" + field));
        SUMS.forEach(table::text);
        ACTION.forEach(table::text);
        PunchColumn.STATE.forEach(column -> table.text(column.code()));
        BEFORE.forEach(table::text);
        table.endRow();
        CommonReels common = new CommonReels(list.items());
        for (PunchItem item : list.items()) {
            place(item);
            label(item.before());
            label(item.after());
            sums(item.fault(), limits);
            action(item, common);
            table.text(corrections(list));
            state(list, item.state(), list.before(item));
        }
        list.gone().forEach(item -> gone(list, item));
        return table.written();
    }

    private void state(PunchList list, PunchState state, Optional<PlaceThen> before) {
        PunchColumn.STATE.forEach(column -> table.text(state.text(column)));
        table.text(list.isFixed(state.item()) ? "yes" : "no").text(state.stage().code())
                .text(list.before().map(EarlierVisit::date).orElse("")).text(before.map(then -> then.verdict().code()).orElse(""));
        Optional<Difference> difference = before.flatMap(PlaceThen::difference);
        table.number(steps(difference), 4).number(uncertainty(difference), 4).endRow();
    }

    private static OptionalDouble steps(Optional<Difference> difference) {
        return difference.map(known -> OptionalDouble.of(known.steps())).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble uncertainty(Optional<Difference> difference) {
        return difference.map(known -> OptionalDouble.of(known.standardUncertaintySteps())).orElse(OptionalDouble.empty());
    }

    /** An item that is not found any more: its place, what the joint there measures now, and what is recorded. */
    private void gone(PunchList list, GoneItem item) {
        Optional<PunchPlace> place = item.state().place();
        Optional<Difference> now = list.now(item).flatMap(PlaceThen::difference);
        table.number(item.state().item(), 0).text(place.map(PunchPlace::cove).orElse("")).text("")
                .text(place.map(PunchPlace::kind).orElse("")).text(item.read() ? NO_LONGER_FOUND : Verdict.NOT_READ.code())
                .number(place.map(known -> OptionalDouble.of(known.positionM())).orElse(OptionalDouble.empty()), 3);
        blank(ITEM.size() - 6 + 2 * LABEL.size());
        table.number(steps(now), 4).number(uncertainty(now), 4);
        blank(SUMS.size() - 2 + ACTION.size());
        state(list, item.state(), list.before().flatMap(visit -> place.flatMap(known -> PlaceThen.in(visit.judgement(), known))));
    }

    private void blank(int cells) {
        for (int i = 0; i < cells; i++) {
            table.text("");
        }
    }

    /** What was done to the readings before they were judged. */
    private String corrections(PunchList list) {
        return String.join(" ", new NoteWords(words).sentences(
                list.judgement().notes().stream().filter(note -> note.kind().corrects()).toList()));
    }

    private void place(PunchItem item) {
        Fault fault = item.fault();
        table.number(item.number(), 0).text(item.cove().id()).text(item.cove().place()).text(fault.kind().code())
                .text(fault.verdict().code()).number(fault.positionM(), 3)
                .text(words.numbers().feetInches(fault.positionM())).number(item.fromM(), 3).number(item.toM(), 3)
                .text(item.cove().datum()).text(id(item.before())).text(id(item.after()));
    }

    private static String id(Optional<Reel> reel) {
        return reel.map(Reel::id).orElse("");
    }

    private void label(Optional<Reel> reel) {
        text(reel, Reel::maker).text(reel.map(Reel::product).orElse(""));
        table.number(reel.filter(known -> known.nominalCct().isPresent())
                .map(known -> OptionalDouble.of(known.nominalCct().getAsInt())).orElse(OptionalDouble.empty()), 0);
        text(reel, Reel::bin);
        text(reel, Reel::lot);
        text(reel, Reel::serial);
        text(reel, Reel::made);
        text(reel, Reel::gtin);
    }

    private CsvTable text(Optional<Reel> reel, Function<Reel, String> field) {
        return table.text(reel.map(field).orElse(""));
    }

    private void sums(Fault fault, Limits limits) {
        Difference difference = fault.difference();
        table.number(difference.steps(), 4).number(difference.standardUncertaintySteps(), 4).number(fault.limitSteps(), 4)
                .text(limits.setBy()).text(limits.stepRule().code()).number(difference.deltaCctK(), 1)
                .number(difference.deltaDuv(), 6).text(difference.towards().words()).number(difference.luxRatio(), 4)
                .confidence(fault.confidence().beyond()).confidence(fault.confidence().within());
    }

    /** Of all feeds that may feed the place, the nearest first. */
    private static String of(List<Feed> feeds, Function<Feed, String> part) {
        return feeds.stream().map(part).collect(Collectors.joining("; "));
    }

    private void action(PunchItem item, CommonReels common) {
        Fault fault = item.fault();
        List<Feed> feeds = item.feeds();
        table.text(words.suspicion(fault.hint())).text(words.checkFirst(fault.hint())).text(punch.toDo(item, common))
                .number(fault.settle().readings().isPresent() ? OptionalDouble.of(fault.settle().readings().getAsInt())
                        : OptionalDouble.empty(), 0)
                .text(CheckJson.whyNot(fault.settle())).text(item.priority().code()).text(punch.priorityReason(item))
                .number(item.cove().heightM(), 2)
                .number(feeds.stream().mapToDouble(Feed::atM).findFirst(), 3)
                .text(of(feeds, Feed::driver)).text(of(feeds, Feed::circuit))
                .text(String.join(" ", punch.cautions(item))).text(punch.standsFor(item));
    }
}
