package covewalk.cli;

import covewalk.survey.file.punch.PunchChange;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the number of an item of the punch list. */
final class ItemOption implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String text) {
        String digits = text.strip();
        if (!digits.matches("[0-9]{1,6}") || Integer.parseInt(digits) < 1 || Integer.parseInt(digits) > PunchChange.MOST) {
            throw new TypeConversionException(Sentences.of("no-item", text));
        }
        return Integer.valueOf(digits);
    }
}
