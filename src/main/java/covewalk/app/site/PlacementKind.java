package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Bounds;
import covewalk.app.forms.Kind;
import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.Writing;
import covewalk.survey.Placement;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Which reel lies from where to where, and how that is known. Its reel may be named, or its label scanned. */
final class PlacementKind implements Kind<Placement> {

    private static final Bounds POSITION = Bounds.from(0, 100_000);

    private final Supplier<ReelFinder> finder;

    PlacementKind(Supplier<ReelFinder> finder) {
        this.finder = finder;
    }

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("fromM"), Ask.typed("toM"), Ask.typed("reel"), Ask.typed("installed"),
                Ask.oneOf("knownFrom", "seen", "as-built", "assumed"));
    }

    @Override
    public Map<String, String> texts(Placement placement, Writing writing) {
        return Map.of("reel", placement.reel(), "fromM", writing.length(placement.fromM()), "toM", writing.length(placement.toM()),
                "knownFrom", placement.knownFrom().code(), "installed", placement.installed());
    }

    @Override
    public Placement read(Answers answers, Placement before) {
        double from = answers.neededLength("fromM", before.fromM(), POSITION);
        double to = answers.neededLength("toM", before.toM(), POSITION);
        if (to <= from) {
            answers.refuse(Problem.refusal("json.placement-order", Double.toString(to), Double.toString(from)));
            return before;
        }
        String reel = answers.needed("reel", before.reel());
        String id = answers.isAbout("reel") ? finder.get().known(reel).map(Reel::id).orElse(reel) : reel;
        return new Placement(id, from, to,
                answers.choice("knownFrom", before.knownFrom(), Placement.KnownFrom::of),
                answers.text("installed", before.installed()));
    }
}
