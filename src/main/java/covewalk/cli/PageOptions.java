package covewalk.cli;

import covewalk.report.page.PageStyle;
import covewalk.report.page.Paper;
import covewalk.words.LengthUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code --paper} and {@code --units}: how the pages of a report are laid out. */
final class PageOptions {

    @Option(names = "--paper", paramLabel = "a4|letter", converter = PaperName.class, description = "the paper to print on; a4 where nothing is said")
    private Paper paper = PageStyle.USUAL.paper();

    @Option(names = "--units", paramLabel = "m|ft", converter = UnitName.class,
            description = "which unit positions come in first; metres where nothing is said")
    private LengthUnit units = PageStyle.USUAL.lengths();

    PageStyle style() {
        return new PageStyle(paper, units);
    }

    /** Reads the name of a paper. */
    static final class PaperName implements ITypeConverter<Paper> {
        @Override
        public Paper convert(String name) {
            return named(name, Paper.values(), Paper::code);
        }
    }

    /** Reads the name of a unit. */
    static final class UnitName implements ITypeConverter<LengthUnit> {
        @Override
        public LengthUnit convert(String name) {
            return named(name, LengthUnit.values(), LengthUnit::code);
        }
    }

    private static <T> T named(String name, T[] all, Function<T, String> code) {
        List<String> codes = Arrays.stream(all).map(code).toList();
        return Arrays.stream(all).filter(one -> code.apply(one).equals(name.toLowerCase(Locale.ROOT))).findFirst()
                .orElseThrow(() -> new TypeConversionException(Sentences.of("no-choice", name, String.join(", ", codes))));
    }
}
