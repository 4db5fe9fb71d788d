package covewalk.survey.file.description;

import covewalk.survey.Reads;
import covewalk.survey.SetUp;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;

/** A set-up in {@code survey.json}. What nobody declared is assumed, and not written as if somebody had. */
final class SetUpEntry {

    private static final Range REPEATABILITY = Range.above(0, 0.1);
    private static final Range UNCERTAINTY = Range.from(0, 0.1);
    private static final Range SMEAR = Range.from(0, 100);
    private static final Range LUX = Range.from(0, 100_000);
    private static final Range PERCENT = Range.above(0, 100);

    private SetUpEntry() {
    }

    static SetUp read(Fields fields) {
        SetUp assumed = SetUp.ASSUMED;
        Set<String> missing = SetUp.UNCERTAINTIES.stream().filter(name -> !fields.has(name)).collect(Collectors.toSet());
        return new SetUp(fields.neededText("id"), fields.text("meter"), fields.text("serial"),
                fields.date("calibrationDue"),
                fields.number("repeatabilityUv", REPEATABILITY).orElse(assumed.repeatabilityUv()),
                fields.number("absoluteUv", UNCERTAINTY).orElse(assumed.absoluteUv()),
                fields.number("unlikeUv", UNCERTAINTY).orElse(assumed.unlikeUv()),
                fields.word("reads", Reads::of, "strip, wash, ceiling").orElse(assumed.reads()),
                fields.number("smearM", SMEAR).orElse(assumed.smearM()),
                fields.number("dimPercent", PERCENT).orElse(assumed.dimPercent()),
                fields.number("leastLux", LUX), missing);
    }

    static void write(Overlay to, SetUp setUp) {
        to.text("id", setUp.id()).text("meter", setUp.meter()).text("serial", setUp.serial())
                .text("calibrationDue", setUp.calibrationDue().map(LocalDate::toString).orElse(""));
        uncertainty(to, setUp, "repeatabilityUv", setUp.repeatabilityUv());
        uncertainty(to, setUp, "absoluteUv", setUp.absoluteUv());
        uncertainty(to, setUp, "unlikeUv", setUp.unlikeUv());
        to.text("reads", setUp.reads().code()).number("smearM", setUp.smearM()).number("dimPercent", setUp.dimPercent())
                .number("leastLux", setUp.leastLux());
    }

    private static void uncertainty(Overlay to, SetUp setUp, String name, double value) {
        if (setUp.assumed().contains(name)) {
            to.nothing(name);
        } else {
            to.number(name, value);
        }
    }
}
