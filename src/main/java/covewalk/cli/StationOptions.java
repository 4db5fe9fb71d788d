package covewalk.cli;

import covewalk.survey.Typed;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.meter.StationList;
import covewalk.survey.file.meter.Stations;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where the rows of an exported file were taken, for a file that does not say so itself. */
final class StationOptions {

    @Option(names = "--start", paramLabel = "LENGTH", converter = LengthOption.class,
            description = "position of the first row, from the cove's datum: 0.5, 500 mm, 20 in, 1' 8\"")
    private Typed start;

    @Option(names = "--every", paramLabel = "LENGTH", converter = LengthOption.class,
            description = "distance from one row to the next; negative when walked towards the datum")
    private Typed every;

    @Option(names = "--positions", paramLabel = "FILE", converter = PathOption.class,
            description = "a file with the position of each row, one a line, in the order of the rows")
    private Path positions;

    Stations stations() throws IOException, CannotBeDone {
        boolean evenly = start != null || every != null;
        if (positions != null && evenly) {
            throw CannotBeDone.because(Sentences.of("stations.twice"));
        }
        if (positions != null) {
            return listed();
        }
        return evenly ? evenly() : new Stations.Unsaid();
    }

    private Stations evenly() throws CannotBeDone {
        if (start == null || every == null) {
            throw CannotBeDone.because(Sentences.of("stations.half", start == null ? "--start" : "--every"));
        }
        return new Stations.Evenly(start, every);
    }

    private Stations listed() throws IOException, CannotBeDone {
        InputFile.check(positions);
        Outcome<Stations> listed = StationList.read(positions);
        if (listed.refused()) {
            throw CannotBeDone.because(listed.problems());
        }
        return listed.value().orElseThrow();
    }
}
