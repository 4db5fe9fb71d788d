package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example report in a browser, where there is one: Chromium without a window. */
class BrowserTest {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    /** It asks its maker for the time and for news of its own; the options below keep it from getting through. */
    private static final Pattern OF_THE_BROWSER = Pattern.compile("^https?://[^/]*(google|googleapis|gvt1)\\.com/");
    private static final Path PAGE = Path.of("docs", "report", "punch-list.html");

    @TempDir
    Path folder;

    private Optional<Path> browser;

    @BeforeEach
    void find() {
        browser = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(place -> NAMES.stream().map(name -> Path.of(place, name))).filter(Files::isExecutable).findFirst();
        assumeTrue(browser.isPresent(), "skipped: none of " + NAMES + " is on the path");
    }

    @Test
    void printsEveryItemOfTheReport() throws Exception {
        Path pdf = folder.resolve("printed.pdf");
        run("--print-to-pdf=" + pdf, page());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            List<String> items = headings();
            assertTrue(items.size() > 5, items.toString());
            items.forEach(item -> assertTrue(text.contains(item), item));
        }
    }

    @Test
    void asksForNothingButThePageItself() throws Exception {
        Path log = folder.resolve("net.json");
        run("--dump-dom", "--log-net-log=" + log, page());
        String asked = Files.readString(log);
        assertTrue(asked.length() > 1000, "the browser kept a log");
        assertEquals(List.of(), Pattern.compile("\"url\":\"((?!file:|data:|chrome|about:)[^\"]*)\"").matcher(asked).results()
                .map(url -> url.group(1)).filter(url -> !OF_THE_BROWSER.matcher(url).find()).distinct().toList());
    }

    private static String page() {
        return PAGE.toUri().toString();
    }

    /** What stands beside the number of each item. */
    private static List<String> headings() throws IOException {
        return Pattern.compile("<h4>(.*?)</h4>").matcher(Files.readString(PAGE)).results().map((MatchResult found) -> found.group(1)).toList();
    }

    private void run(String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(browser.orElseThrow().toString(), "--headless", "--no-sandbox", "--disable-gpu",
                "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-quic", "--host-resolver-rules=MAP * ~NOTFOUND",
                "--user-data-dir=" + folder.resolve("profile")));
        Stream.of(options).forEach(command::add);
        Process process = new ProcessBuilder(command).redirectOutput(folder.resolve("dom.html").toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        boolean ended = process.waitFor(2, TimeUnit.MINUTES);
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        assertTrue(ended, "the browser did not come to an end");
        assertEquals(0, process.exitValue(), "the browser stopped");
    }
}
