package covewalk.cli;

import covewalk.report.Readership;
import covewalk.report.Readership.Reader;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** For whom a page is wanted beside the punch list. */
final class ReaderOptions {

    @Option(names = "--for", paramLabel = "READER", converter = ByName.class, description = "a page more: specifier, with each joint in"
            + " dispute on a sheet of its own, or warranty, with all that is known of the reel named by --reel")
    private Reader reader;

    @Option(names = "--reel", paramLabel = "ID", description = "with --for warranty: the reel, by its id or serial; capitals"
            + " matter only between names that differ by them alone")
    private String reel;

    /** The readers that are asked for. Refuses what does not go together, and a reel that is not there. */
    Readership of(Survey survey) throws CannotBeDone {
        if (reader == Reader.WARRANTY && reel == null) {
            throw CannotBeDone.because(Sentences.of("reader.which-reel"));
        }
        if (reader != Reader.WARRANTY && reel != null) {
            throw CannotBeDone.because(Sentences.of("reader.reel-alone"));
        }
        return reader == null ? Readership.everybody()
                : new Readership(reader, reel == null ? Optional.empty() : Optional.of(reel(survey)));
    }

    private Reel reel(Survey survey) throws CannotBeDone {
        String name = reel.strip();
        List<Reel> named = Readership.reelsNamed(name, survey);
        if (named.size() > 1) {
            boolean bySerial = named.stream().allMatch(one -> one.serial().equals(name));
            throw CannotBeDone.because(Sentences.of(bySerial ? "reader.reels" : "reader.reels-by-capitals", name, ids(named)));
        }
        if (named.isEmpty()) {
            throw CannotBeDone.because(Sentences.of("reader.no-reel", name, ids(survey.reels())));
        }
        return named.get(0);
    }

    private static String ids(List<Reel> reels) {
        return reels.stream().map(Reel::id).collect(Collectors.joining(", "));
    }

    /** Reads for whom. */
    static final class ByName implements ITypeConverter<Reader> {

        @Override
        public Reader convert(String text) {
            return Stream.of(Reader.SPECIFIER, Reader.WARRANTY).filter(each -> each.code().equals(text)).findFirst()
                    .orElseThrow(() -> new TypeConversionException(Sentences.of("no-reader", text)));
        }
    }
}
