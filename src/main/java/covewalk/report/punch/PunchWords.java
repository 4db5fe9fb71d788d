package covewalk.report.punch;

import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.SetUp;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Lengths;
import covewalk.words.Numbers;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A punch item in sentences, the same on paper, on screen and in the files. */
public final class PunchWords {

    private static final int LONGEST_NAME = 120;

    private final Words words;
    private final Numbers numbers;
    private final Lengths lengths;

    public PunchWords(Words words) {
        this.words = words;
        this.numbers = words.numbers();
        this.lengths = words.lengths();
    }

    public Lengths lengths() {
        return lengths;
    }

    /** As "Joint at 5.00 m (16 ft 4 3/4 in)"; a fault along a reel by both its ends. */
    public String place(PunchItem item) {
        Fault fault = item.fault();
        if (!item.alike().isEmpty()) {
            return words.text("item.place.off-target.more", numbers.fixed(item.alike().size() + 1, 0),
                    lengths.first(fault.positionM()), lengths.second(fault.positionM()));
        }
        String key = "item.place." + fault.kind().code();
        if (isLength(fault)) {
            return words.text(key, words.text("item.from-to", lengths.first(fault.fromM(), fault.toM())),
                    words.text("item.from-to", lengths.second(fault.fromM(), fault.toM())));
        }
        return words.text(key, lengths.first(fault.positionM()), lengths.second(fault.positionM()));
    }

    /** As "5.00 m", or "15.00 to 20.00 m" for what lies along a reel. */
    public String placeInShort(PunchItem item) {
        Fault fault = item.fault();
        return isLength(fault) ? words.text("item.from-to", lengths.first(item.fromM(), item.toM())) : lengths.first(fault.positionM());
    }

    private static boolean isLength(Fault fault) {
        return fault.kind() == FaultKind.DRIFT || fault.kind() == FaultKind.OFF_TARGET;
    }

    public String datum(Cove cove) {
        return cove.datum().isBlank() ? words.text("place.no-datum") : Shortened.of(cove.datum(), LONGEST_NAME);
    }

    /** As "Cove C1, lobby, north side". */
    public String cove(Cove cove) {
        String id = Shortened.of(cove.id(), LONGEST_NAME);
        return cove.place().isBlank() ? words.text("item.cove.unnamed", id)
                : words.text("item.cove", id, Shortened.of(cove.place(), LONGEST_NAME));
    }

    /** Where it may lie, for what is not known to a point; else nothing. */
    public String range(PunchItem item) {
        boolean known = item.toM() - item.fromM() < 0.005 || isLength(item.fault()) && item.alike().isEmpty();
        return known ? "" : words.text("item.range", words.text("item.from-to", lengths.first(item.fromM(), item.toM())),
                words.text("item.from-to", lengths.second(item.fromM(), item.toM())));
    }

    /** The other lengths that an item stands for, with their reels and steps; nothing where it stands for itself. */
    public String standsFor(PunchItem item) {
        return item.alike().isEmpty() ? "" : words.text("item.stands-for", item.alike().stream().map(fault ->
                words.text("item.stands-for.one", Shortened.of(String.join(" | ", fault.reels()), LONGEST_NAME),
                        lengths.cell(fault.fromM()), lengths.first(fault.toM()), numbers.steps(fault.difference().steps())))
                .collect(Collectors.joining("; ")));
    }

    /** As "3.40 steps, standard uncertainty 0.22". */
    public String measured(Fault fault) {
        return words.text("item.measured", numbers.steps(fault.difference().steps()),
                numbers.steps(fault.difference().standardUncertaintySteps()));
    }

    /** As "the far side is warmer, pinker". */
    public String towards(Fault fault) {
        return words.text("item.towards." + fault.kind().code(), words.towards(fault.difference().towards()));
    }

    public String confidence(Fault fault) {
        return words.text("item.confidence", numbers.confidence(fault.confidence().beyond()),
                numbers.confidence(fault.confidence().within()));
    }

    /** Lux on the far side over lux on the datum's side; says so where it was not measured. */
    public String luxRatio(Fault fault) {
        return fault.difference().luxRatio().isEmpty() ? words.text("item.no-lux")
                : numbers.fixed(fault.difference().luxRatio().getAsDouble(), 2);
    }

    /** What to do: put right what is beyond, read again what is unsettled, or agree where reading does not help. */
    public String toDo(Fault fault) {
        Settle settle = fault.settle();
        if (settle.whyNot() == Settle.WhyNot.SCATTER) {
            return words.text("item.look-again");
        }
        if (fault.verdict() == Verdict.BEYOND) {
            String todo = words.text("item.do." + fault.kind().code());
            return Priority.isDoubtful(fault) ? words.text("item.read-first", todo) : todo;
        }
        if (settle.readings().isEmpty()) {
            return words.text("item.agree", words.toSettle(settle));
        }
        boolean oneSided = fault.kind() == FaultKind.OFF_TARGET || fault.kind() == FaultKind.LONE_STATION;
        int readings = settle.readings().getAsInt();
        return words.text("item.read-again", readings == 0 ? words.text("item.read-again-any")
                : words.count(oneSided ? "settle.here" : "settle.readings", readings));
    }

    /** The same; where one reel stands at several items, it is named first in each of them. */
    public String toDo(PunchItem item, CommonReels common) {
        return common.of(item).map(reel -> words.text("item.common-reel", Shortened.of(reel, LONGEST_NAME), numbersOf(common.at(reel)))
                + " " + toDo(item.fault())).orElseGet(() -> toDo(item.fault()));
    }

    private String numbersOf(List<PunchItem> items) {
        return items.stream().map(item -> numbers.fixed(item.number(), 0)).collect(Collectors.joining(", "));
    }

    /** The same in a few words, for a list. */
    public String toDoInShort(Fault fault) {
        return switch (Priority.of(fault)) {
            case FIRST, NEXT -> words.text("item.short." + fault.kind().code());
            case READ_AGAIN -> Priority.isDoubtful(fault) ? words.text("item.short.look-again")
                    : fault.verdict() == Verdict.BEYOND ? words.text("item.short." + fault.kind().code())
                    : words.text("item.short.read-again", words.toSettleInShort(fault.settle(), fault.verdict()));
            case AGREE -> words.text("item.short.agree");
        };
    }

    public String priority(PunchItem item) {
        return words.text("priority." + item.priority().code());
    }

    public String priorityReason(PunchItem item) {
        return words.text("priority." + item.priority().code() + ".why", timesTheLimit(item));
    }

    public String timesTheLimit(PunchItem item) {
        return numbers.fixed(item.fault().difference().steps() / item.fault().limitSteps(), 1);
    }

    public String height(Cove cove) {
        if (cove.heightM().isEmpty()) {
            return words.text("item.height-unknown");
        }
        double height = cove.heightM().getAsDouble();
        return words.text("item.height", lengths.first(Math.max(0, height)), lengths.second(Math.max(0, height)));
    }

    public String feed(PunchItem item) {
        List<Feed> feeds = item.feeds();
        if (feeds.isEmpty()) {
            return words.text("item.no-feed");
        }
        String all = feeds.stream().map(this::feed).collect(Collectors.joining("; "));
        return feeds.size() == 1 ? all : words.text("item.feeds", all);
    }

    private String feed(Feed feed) {
        return words.text("item.feed", lengths.first(feed.atM()), noted(feed.driver()), noted(feed.circuit()));
    }

    private String noted(String text) {
        return text.isBlank() ? words.text("reel.not-noted") : Shortened.of(text, LONGEST_NAME);
    }

    /** The cautions that apply here, in short; the box of cautions says more. */
    public List<String> cautions(PunchItem item) {
        List<String> cautions = new ArrayList<>();
        if (item.atHeight()) {
            cautions.add(heightCaution(item.cove()));
        }
        if (item.touchesWiring()) {
            cautions.add(words.text("item.caution.electrical"));
        }
        return cautions;
    }

    /** For a place that one cannot reach from the floor, as far as is known. */
    public String heightCaution(Cove cove) {
        return words.text(cove.heightM().isEmpty() ? "item.caution.unknown-height" : "item.caution.height");
    }

    /** As "Meter name, serial 123, calibration due 2027-03-01". */
    public String meter(SetUp setUp) {
        return words.text("page.meter.line", noted(setUp.meter()), noted(setUp.serial()),
                setUp.calibrationDue().map(Object::toString).orElseGet(() -> words.text("reel.not-noted")));
    }
}
