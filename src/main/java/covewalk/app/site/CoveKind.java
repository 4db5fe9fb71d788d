package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Bounds;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Writing;
import covewalk.survey.Cove;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A cove as such; what lies in it is described beside its drawing. */
final class CoveKind implements Kind<Cove> {

    private static final Bounds LENGTH = Bounds.above(0, 100_000);
    private static final Bounds HEIGHT = Bounds.from(0, 1000);

    /** A cove that nobody measured yet is one reel long. */
    private static final double FIRST_LENGTH_M = 5;

    /** One more, with a name that none has. */
    static Cove fresh(List<Cove> there) {
        Set<String> taken = there.stream().map(Cove::id).collect(Collectors.toSet());
        String id = IntStream.rangeClosed(there.size() + 1, 2 * there.size() + 1).mapToObj(number -> "C" + number)
                .filter(name -> !taken.contains(name)).findFirst().orElseThrow();
        return new Cove(id, "", FIRST_LENGTH_M, false, "", OptionalDouble.empty(), "", Optional.empty(), List.of(), List.of());
    }

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("id"), Ask.typed("lengthM"), Ask.typed("place"), Ask.typed("datum"), Ask.typed("heightM"),
                Ask.typed("surface"), Ask.typed("target"), Ask.yesOrNo("closed"));
    }

    @Override
    public Map<String, String> texts(Cove cove, Writing writing) {
        Map<String, String> texts = new HashMap<>(Map.of("id", cove.id(), "place", cove.place(),
                "lengthM", writing.length(cove.lengthM()), "closed", Boolean.toString(cove.closed()), "datum", cove.datum(),
                "heightM", writing.length(cove.heightM()), "surface", cove.surface()));
        texts.put("target", writing.colour(cove.target()));
        return texts;
    }

    @Override
    public Cove read(Answers answers, Cove before) {
        return new Cove(answers.needed("id", before.id()), answers.text("place", before.place()),
                answers.neededLength("lengthM", before.lengthM(), LENGTH), answers.flag("closed", before.closed()),
                answers.text("datum", before.datum()), answers.length("heightM", before.heightM(), HEIGHT),
                answers.text("surface", before.surface()), answers.colour("target", before.target()), before.feeds(),
                before.placements());
    }
}
