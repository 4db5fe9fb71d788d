package covewalk.survey.file.description;

import covewalk.colour.CctDuv;
import covewalk.colour.Xy;
import covewalk.survey.Problem;
import covewalk.survey.StatedColour;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedColourCheck;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A stated colour in {@code survey.json}: {@code cct} and {@code duv}, or {@code x} and {@code y}. */
final class ColourEntry {

    private static final Range ANY = Range.from(-1e9, 1e9); // which colours there are, the check of colours knows
    private static final Map<String, String> FIELD_OF = Map.of("cct_k", "cct", "duv", "duv", "x", "x", "y", "y");

    private ColourEntry() {
    }

    static Optional<StatedColour> read(Fields fields, String name) {
        if (!fields.has(name)) {
            return Optional.empty();
        }
        Fields colour = fields.object(name);
        boolean byXy = colour.has("x") || colour.has("y");
        if (byXy && (colour.has("cct") || colour.has("duv"))) {
            colour.add("x", Problem.refusal("json.colour-both"));
            return Optional.empty();
        }
        return byXy ? byXy(colour) : byCctDuv(colour);
    }

    private static Optional<StatedColour> byXy(Fields colour) {
        Optional<Typed> x = typed(colour, "x");
        Optional<Typed> y = typed(colour, "y");
        boolean sound = x.isPresent() && y.isPresent() && check(colour, TypedColour.ofXy(x.get(), y.get()));
        return sound ? Optional.of(new StatedColour.ByXy(new Xy(x.get().value(), y.get().value()))) : Optional.empty();
    }

    private static Optional<StatedColour> byCctDuv(Fields colour) {
        Optional<Typed> cct = typed(colour, "cct");
        Optional<Typed> duv = typed(colour, "duv");
        boolean sound = cct.isPresent() && duv.isPresent() && check(colour, TypedColour.ofCctDuv(cct.get(), duv.get()));
        return sound ? Optional.of(new StatedColour.ByCctDuv(new CctDuv(cct.get().value(), duv.get().value())))
                : Optional.empty();
    }

    private static Optional<Typed> typed(Fields colour, String name) {
        OptionalDouble number = colour.needed(name).isPresent() ? colour.number(name, ANY) : OptionalDouble.empty();
        return number.isPresent() ? Typed.of(Double.toString(number.getAsDouble())) : Optional.empty();
    }

    /** A colour somebody states need not look like a reading: only what cannot be is told. */
    private static boolean check(Fields colour, TypedColour typed) {
        List<Problem> wrong = TypedColourCheck.problems(typed).stream().filter(Problem::refused).toList();
        wrong.forEach(problem -> colour.add(FIELD_OF.get(problem.column()), problem));
        return wrong.isEmpty();
    }

    static void write(Overlay to, String name, Optional<StatedColour> colour) {
        if (colour.isEmpty()) {
            to.nothing(name);
        } else if (colour.get() instanceof StatedColour.ByXy stated) {
            to.object(name, inner -> inner.number("x", stated.xy().x()).number("y", stated.xy().y())
                    .drop("cct").drop("duv"));
        } else if (colour.get() instanceof StatedColour.ByCctDuv stated) {
            to.object(name, inner -> inner.number("cct", stated.cctDuv().cctK()).number("duv", stated.cctDuv().duv())
                    .drop("x").drop("y"));
        }
    }
}
