package covewalk.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads how many significant digits to write: 1 to 12, as far as the sums are exact. */
final class DigitsOption implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String text) {
        if (!text.matches("[1-9]|1[0-2]")) {
            throw new TypeConversionException(Sentences.of("no-digits", text));
        }
        return Integer.valueOf(text);
    }
}
