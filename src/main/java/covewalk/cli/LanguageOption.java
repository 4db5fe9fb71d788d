package covewalk.cli;

import covewalk.words.Language;
import covewalk.words.Words;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code --language}, for commands that write for people: English unless asked, so that no machine changes a report. */
final class LanguageOption {

    @Option(names = "--language", paramLabel = "CODE", converter = ByCode.class, description = "en, the default, or de: the"
            + " language of sentences and of decimal marks; JSON, codes in tables and this command's own messages stay as they are")
    private Language language = Language.ENGLISH;

    Words words() {
        return language.words();
    }

    /** Reads the code of a language. */
    static final class ByCode implements ITypeConverter<Language> {

        @Override
        public Language convert(String code) {
            return Language.of(code).orElseThrow(() -> new TypeConversionException(Sentences.of("no-language", code,
                    Arrays.stream(Language.values()).map(Language::code).collect(Collectors.joining(", ")))));
        }
    }
}
