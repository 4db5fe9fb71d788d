package covewalk.cli;

import covewalk.survey.Typed;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a limit in steps, above 0 and up to 100. */
final class StepsOption implements ITypeConverter<Double> {

    /** As in a survey's description. */
    private static final double MOST = 100;

    @Override
    public Double convert(String text) {
        return Typed.of(text).map(Typed::value).filter(steps -> steps > 0 && steps <= MOST)
                .orElseThrow(() -> new TypeConversionException(Sentences.of("no-steps", text)));
    }
}
