package covewalk.app.forms;

import covewalk.colour.CctDuv;
import covewalk.colour.Xy;
import covewalk.survey.Problem;
import covewalk.survey.StatedColour;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedColourCheck;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A stated colour in one line: {@code 2700}, {@code 2700 K Duv 0.001}, or {@code x 0.4578 y 0.4101}. Which of the two it
 * is shows in the size of the first number.
 */
final class ColourText {

    private static final Typed ON_THE_LOCUS = new Typed("0.0", 0);

    private ColourText() {
    }

    static String of(Optional<StatedColour> colour, Writing writing) {
        if (colour.isEmpty()) {
            return "";
        }
        if (colour.get() instanceof StatedColour.ByXy stated) {
            return "x " + writing.number(stated.xy().x()) + " y " + writing.number(stated.xy().y());
        }
        CctDuv stated = ((StatedColour.ByCctDuv) colour.get()).cctDuv();
        return writing.number(stated.cctK()) + " K Duv " + writing.number(stated.duv());
    }

    /** @param told why there is no such colour; told nothing where the text is no colour at all */
    static Optional<StatedColour> read(String text, Consumer<Problem> told) {
        List<Optional<Typed>> numbers = Arrays.stream(text.replaceAll("(?i)duv|cct|[kxy;/=:]", " ").strip().split("\\s+"))
                .map(Typed::of).toList();
        if (numbers.size() > 2 || numbers.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        Typed first = numbers.get(0).orElseThrow();
        if (first.value() >= 1) {
            Typed duv = numbers.size() == 2 ? numbers.get(1).orElseThrow() : ON_THE_LOCUS;
            return sound(TypedColour.ofCctDuv(first, duv), told)
                    ? Optional.of(new StatedColour.ByCctDuv(new CctDuv(first.value(), duv.value()))) : Optional.empty();
        }
        return numbers.size() == 2 && sound(TypedColour.ofXy(first, numbers.get(1).orElseThrow()), told)
                ? Optional.of(new StatedColour.ByXy(new Xy(first.value(), numbers.get(1).orElseThrow().value()))) : Optional.empty();
    }

    private static boolean sound(TypedColour colour, Consumer<Problem> told) {
        Optional<Problem> refusal = TypedColourCheck.problems(colour).stream().filter(Problem::refused).findFirst();
        refusal.ifPresent(told);
        return refusal.isEmpty();
    }
}
