package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Bounds;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Writing;
import covewalk.survey.Reads;
import covewalk.survey.SetUp;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A meter, how it reads, and the level of the light. An uncertainty that is left empty is assumed, and printed so. */
final class SetUpKind implements Kind<SetUp> {

    private static final Bounds REPEATABILITY = Bounds.above(0, 0.1);
    private static final Bounds UNCERTAINTY = Bounds.from(0, 0.1);
    private static final Bounds SMEAR = Bounds.from(0, 100);
    private static final Bounds LUX = Bounds.from(0, 100_000);
    private static final Bounds PERCENT = Bounds.above(0, 100);

    /** One more of which nobody has said anything, with a name that none has: the next letter, and numbers after Z. */
    static SetUp fresh(List<SetUp> there) {
        Set<String> taken = there.stream().map(SetUp::id).collect(Collectors.toSet());
        String id = Stream.concat(IntStream.rangeClosed('A', 'Z').mapToObj(Character::toString),
                IntStream.rangeClosed(1, there.size() + 1).mapToObj(number -> "A" + number))
                .filter(name -> !taken.contains(name)).findFirst().orElseThrow();
        SetUp usual = SetUp.ASSUMED;
        return new SetUp(id, "", "", usual.calibrationDue(), usual.repeatabilityUv(), usual.absoluteUv(), usual.unlikeUv(), usual.reads(),
                usual.smearM(), usual.dimPercent(), usual.leastLux(), usual.assumed());
    }

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("id"), Ask.typed("meter"), Ask.typed("serial"), Ask.typed("calibrationDue"),
                Ask.typed("repeatabilityUv"), Ask.typed("absoluteUv"), Ask.typed("unlikeUv"), Ask.typed("smearM"),
                Ask.typed("dimPercent"), Ask.typed("leastLux"), Ask.oneOf("reads", "strip", "wash", "ceiling"));
    }

    @Override
    public Map<String, String> texts(SetUp setUp, Writing writing) {
        Map<String, String> texts = new HashMap<>(Map.of("id", setUp.id(), "meter", setUp.meter(), "serial", setUp.serial(),
                "calibrationDue", writing.date(setUp.calibrationDue()), "reads", setUp.reads().code(),
                "smearM", writing.length(setUp.smearM()), "dimPercent", writing.number(setUp.dimPercent()),
                "leastLux", writing.number(setUp.leastLux())));
        texts.put("repeatabilityUv", writing.number(declared(setUp, "repeatabilityUv", setUp.repeatabilityUv())));
        texts.put("absoluteUv", writing.number(declared(setUp, "absoluteUv", setUp.absoluteUv())));
        texts.put("unlikeUv", writing.number(declared(setUp, "unlikeUv", setUp.unlikeUv())));
        return texts;
    }

    private static OptionalDouble declared(SetUp setUp, String name, double value) {
        return setUp.assumed().contains(name) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    @Override
    public SetUp read(Answers answers, SetUp before) {
        SetUp usual = SetUp.ASSUMED;
        OptionalDouble repeatability = uncertainty(answers, before, "repeatabilityUv", before.repeatabilityUv(), REPEATABILITY);
        OptionalDouble absolute = uncertainty(answers, before, "absoluteUv", before.absoluteUv(), UNCERTAINTY);
        OptionalDouble unlike = uncertainty(answers, before, "unlikeUv", before.unlikeUv(), UNCERTAINTY);
        return new SetUp(answers.needed("id", before.id()), answers.text("meter", before.meter()),
                answers.text("serial", before.serial()), answers.date("calibrationDue", before.calibrationDue()),
                repeatability.orElse(usual.repeatabilityUv()), absolute.orElse(usual.absoluteUv()), unlike.orElse(usual.unlikeUv()),
                answers.choice("reads", before.reads(), Reads::of), answers.neededLength("smearM", before.smearM(), SMEAR),
                answers.needed("dimPercent", before.dimPercent(), PERCENT), answers.number("leastLux", before.leastLux(), LUX),
                assumed(repeatability, absolute, unlike));
    }

    private static OptionalDouble uncertainty(Answers answers, SetUp before, String name, double value, Bounds bounds) {
        return answers.number(name, declared(before, name, value), bounds);
    }

    private static Set<String> assumed(OptionalDouble... inTheOrderOfTheirNames) {
        Set<String> assumed = new TreeSet<>();
        for (int i = 0; i < inTheOrderOfTheirNames.length; i++) {
            if (inTheOrderOfTheirNames[i].isEmpty()) {
                assumed.add(SetUp.UNCERTAINTIES.get(i));
            }
        }
        return assumed;
    }
}
