package covewalk.cli;

import covewalk.report.Audit;
import covewalk.report.Report;
import covewalk.report.SideReport;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** For whom a page is wanted beside the punch list. */
final class ReaderOptions {

    private enum Reader { SPECIFIER, WARRANTY }

    @Option(names = "--for", paramLabel = "READER", converter = ByName.class, description = "a page more: specifier, with each joint in"
            + " dispute on a sheet of its own, or warranty, with all that is known of the reel named by --reel")
    private Reader reader;

    @Option(names = "--reel", paramLabel = "ID", description = "with --for warranty: the reel, by its id or serial")
    private String reel;

    /** Refuses what does not go together, and a reel that is not there. */
    void check(Survey survey) throws CannotBeDone {
        if (reader == Reader.WARRANTY && reel == null) {
            throw CannotBeDone.because(Sentences.of("reader.which-reel"));
        }
        if (reader != Reader.WARRANTY && reel != null) {
            throw CannotBeDone.because(Sentences.of("reader.reel-alone"));
        }
        if (reel != null) {
            reel(survey);
        }
    }

    /** Writes the page that is wanted; none where none is. */
    Optional<Report.Written> write(Audit audit, Path survey, SideReport side, Path out) throws IOException, CannotBeDone {
        if (reader == null) {
            return Optional.empty();
        }
        return Optional.of(reader == Reader.SPECIFIER ? side.forSpecifier(audit, out)
                : side.forWarranty(audit, reel(audit.judgement().survey()), survey, out));
    }

    /** By id first; a serial counts where one reel alone has it. */
    private Reel reel(Survey survey) throws CannotBeDone {
        Optional<Reel> byId = survey.reel(reel);
        List<Reel> bySerial = survey.reels().stream().filter(each -> each.serial().equals(reel) && !reel.isBlank()).toList();
        if (byId.isEmpty() && bySerial.size() > 1) {
            throw CannotBeDone.because(Sentences.of("reader.reels", reel, ids(bySerial)));
        }
        if (byId.isEmpty() && bySerial.isEmpty()) {
            throw CannotBeDone.because(Sentences.of("reader.no-reel", reel, ids(survey.reels())));
        }
        return byId.orElseGet(() -> bySerial.get(0));
    }

    private static String ids(List<Reel> reels) {
        return reels.stream().map(Reel::id).collect(Collectors.joining(", "));
    }

    /** Reads for whom. */
    static final class ByName implements ITypeConverter<Reader> {

        @Override
        public Reader convert(String text) {
            return Arrays.stream(Reader.values()).filter(each -> each.name().toLowerCase(Locale.ROOT).equals(text)).findFirst()
                    .orElseThrow(() -> new TypeConversionException(Sentences.of("no-reader", text)));
        }
    }
}
