package covewalk.cli;

import covewalk.survey.Lengths;
import covewalk.survey.Typed;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a length along a cove, with or without its unit, as metres; with a minus sign, towards the datum. */
final class LengthOption implements ITypeConverter<Typed> {

    @Override
    public Typed convert(String text) {
        String length = text.strip();
        Optional<Typed> metres = length.startsWith("-") ? Lengths.metres(length.substring(1)).map(LengthOption::back)
                : Lengths.metres(length);
        return metres.orElseThrow(() -> new TypeConversionException(Sentences.of("no-length", text)));
    }

    private static Typed back(Typed metres) {
        return new Typed("-" + metres.text(), -metres.value());
    }
}
