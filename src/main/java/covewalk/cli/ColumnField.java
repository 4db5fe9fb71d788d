package covewalk.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * What a column of a meter's export holds, as said by {@code --map column=field}.
 *
 * @param column its title, or its number from 1
 * @param field the field's name
 */
record ColumnField(String column, String field) {

    /** Splits at the last {@code =}: a title may hold one, a field never does. */
    static final class Option implements ITypeConverter<ColumnField> {

        @Override
        public ColumnField convert(String text) {
            int split = text.lastIndexOf('=');
            if (split < 1 || split == text.length() - 1) {
                throw new TypeConversionException(Sentences.of("no-map", text));
            }
            return new ColumnField(text.substring(0, split).strip(), text.substring(split + 1).strip());
        }
    }
}
