package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.report.Readership.Reader;
import covewalk.report.page.PageStyle;
import covewalk.report.page.Pages;
import covewalk.report.punch.Sample;
import covewalk.survey.Reel;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditionTest {

    private static final List<String> LIST = List.of("punch-list.csv", "punch-list.html", "punch-list.json", "punch-list.pdf");

    @TempDir
    Path folder;

    private List<String> told(Readership readers, BooleanSupplier stopped) throws IOException {
        List<Report.Written> written = new ArrayList<>();
        new Edition(Words.english(), PageStyle.USUAL, readers).write(Pages.audit(Sample.judgement(), ""), folder, folder, stopped, written::add);
        return written.stream().flatMap(one -> one.files().stream()).map(file -> file.getFileName().toString()).sorted().toList();
    }

    private List<String> there() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static Readership warranty(String reel) {
        Reel one = Sample.judgement().survey().reel(reel).orElseThrow();
        return new Readership(Reader.WARRANTY, Optional.of(one));
    }

    @Test
    void everybodyGetsThePunchList() throws IOException {
        assertEquals(LIST, told(Readership.everybody(), () -> false));
        assertEquals(LIST, there());
    }

    @Test
    void oneReaderGetsAPageBesideIt() throws IOException {
        assertEquals(Stream.concat(LIST.stream(), Stream.of("specifier.html", "specifier.pdf")).toList(),
                told(new Readership(Reader.SPECIFIER, Optional.empty()), () -> false));
        assertEquals(Stream.concat(LIST.stream(), Stream.of("warranty-R2.html", "warranty-R2.pdf")).toList(),
                told(warranty("R2"), () -> false));
    }

    @Test
    void stoppedBeforeTheFirstFileItLeavesNothing() throws IOException {
        assertEquals(List.of(), told(warranty("R2"), () -> true));
        assertEquals(List.of(), there());
    }

    @Test
    void stoppedAmongTheFilesOfTheListItLeavesAnEarlierListAsItWas() throws IOException {
        Path earlier = Files.writeString(folder.resolve("punch-list.html"), "earlier");
        AtomicInteger asked = new AtomicInteger();
        assertEquals(List.of(), told(warranty("R2"), () -> asked.incrementAndGet() > 2));
        assertEquals("earlier", Files.readString(earlier));
        assertEquals(List.of("punch-list.html"), there());
    }

    @Test
    void stoppedBehindTheListItTellsTheListAndWritesNoPageBesideIt() throws IOException {
        assertEquals(LIST, told(warranty("R2"), () -> Files.exists(folder.resolve("punch-list.html"))));
        assertEquals(LIST, there());
    }
}
