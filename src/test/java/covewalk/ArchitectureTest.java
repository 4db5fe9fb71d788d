package covewalk;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which package may know which. Plain tests: some versions of Surefire skip ArchUnit's own kind and stay green. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ArchitectureTest {

    /** The packages from the bottom up; each may use itself, what its row names, and Java. */
    private static final List<Room> ROOMS = List.of(
            new Room("covewalk.colour..", "", "colour is plain sums that anybody may use"),
            new Room("covewalk.survey", "covewalk.colour..", "a survey is what was seen, whatever is made of it"),
            new Room("covewalk.survey.label", "covewalk.survey covewalk.colour..", "a label says what it says, wherever it is scanned"),
            new Room("covewalk.survey.file..", "covewalk.survey covewalk.colour..", "files hold surveys and judge nothing"),
            new Room("covewalk.survey.file.disk", "covewalk.survey", "a disk keeps bytes, whatever they say"),
            new Room("covewalk.verdict..", "covewalk.survey covewalk.colour..", "a verdict opens no file and chooses no words"),
            new Room("covewalk.verdict.evidence", "covewalk.verdict.stretch covewalk.survey covewalk.colour..",
                    "what weakens the readings is found before anything is judged"),
            new Room("covewalk.words..", "covewalk.verdict.. covewalk.survey covewalk.colour..", "words say what was found"),
            new Room("covewalk.plot..", "covewalk.words.. covewalk.verdict.. covewalk.survey covewalk.colour..",
                    "a plot draws what was found, on any surface"),
            new Room("covewalk.report..", "covewalk.plot.. covewalk.words.. covewalk.verdict.. covewalk.survey.. covewalk.colour..",
                    "a report puts on paper what the packages below know"),
            new Room("covewalk.report.punch", "covewalk.words.. covewalk.verdict.. covewalk.survey..",
                    "what is on the list does not depend on how it is laid out"),
            new Room("covewalk.report.page", "covewalk.report.punch covewalk.report.text covewalk.plot.. covewalk.words.. covewalk.verdict.."
                    + " covewalk.survey.. covewalk.colour..", "a page is read in a browser, whether a PDF is made of it or not"),
            new Room("covewalk.cli..", "covewalk.report.. covewalk.plot.. covewalk.words.. covewalk.verdict.. covewalk.survey.."
                    + " covewalk.colour..", "commands call everything but the screens, and nothing calls them"),
            new Room("covewalk.app..", "covewalk.report.. covewalk.plot.. covewalk.words.. covewalk.verdict.. covewalk.survey.."
                    + " covewalk.colour..", "screens call everything but the commands, and nothing calls them"),
            new Room("covewalk", "covewalk.cli.. covewalk.app", "the start picks who works, and does nothing itself"));

    private JavaClasses code;

    /**
     * A package and what it may use.
     *
     * @param uses packages, with a space between them
     */
    private record Room(String name, String uses, String because) {

        String[] allowed() {
            return Stream.concat(Stream.of(name), Arrays.stream(uses.split(" "))).filter(used -> !used.isEmpty()).toArray(String[]::new);
        }
    }

    @BeforeAll
    void readTheCompiledClasses() {
        code = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("covewalk");
    }

    static Stream<Arguments> rooms() {
        return ROOMS.stream().map(Arguments::of);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rooms")
    void arrowsNeverPointBack(Room room) {
        noClasses().that().resideInAPackage(room.name())
                .should().dependOnClassesThat(resideInAnyPackage("covewalk..").and(resideInOther(room)))
                .because(room.because()).check(code);
    }

    private static DescribedPredicate<JavaClass> resideInOther(Room room) {
        return DescribedPredicate.not(resideInAnyPackage(room.allowed()));
    }

    @Test
    void everyPackageIsSpokenFor() {
        Set<String> known = ROOMS.stream().map(Room::name).collect(Collectors.toSet());
        classes().should().resideInAnyPackage(known.toArray(String[]::new))
                .because("a package whose arrows nobody decided on would be free to point anywhere").check(code);
    }

    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource(delimiter = '|', textBlock = """
        picocli..                  | covewalk.cli..                                  | only commands read command lines
        com.fasterxml.jackson..    | covewalk.survey.file.description covewalk.survey.file.seal covewalk.report.data | JSON is read and written where files are
        com.opencsv..              | covewalk.report.data                            | tables for spreadsheets are written in one place
        org.apache.commons.math3.. | covewalk.colour.. covewalk.verdict..             | sums are made in two places
        org.apache.commons.numbers.. | covewalk.verdict..                            | the limit test needs a fast error function
        gg.jte..                   | covewalk.report.page                            | only the report has pages
        com.openhtmltopdf..        | covewalk.report.pdf                             | pages become PDF in one place
        org.apache.pdfbox..        | covewalk.report.pdf                             | pages become PDF in one place
        org.apache.fontbox..       | covewalk.report.pdf                             | pages become PDF in one place
        org.w3c.dom..              | covewalk.report.pdf                             | the PDF is laid out from the page's own XML
        javafx..                   | covewalk.app..                                  | only screens know the screen
        atlantafx..                | covewalk.app..                                  | only screens know the screen
        javax.sound..              | covewalk.app.walk..                             | only a kept reading is heard
        """)
    void eachLibraryHasItsDoor(String library, String doors, String because) {
        noClasses().that().resideOutsideOfPackages(doors.split(" "))
                .should().dependOnClassesThat().resideInAnyPackage(library).because(because).check(code);
    }

    @Test
    void noOtherLibraryIsUsed() {
        classes().should().onlyDependOnClassesThat().resideInAnyPackage("covewalk..", "java..", "picocli..", "com.fasterxml.jackson..",
                "com.opencsv..", "org.apache.commons.math3..", "org.apache.commons.numbers..", "gg.jte..", "com.openhtmltopdf..", "org.apache.pdfbox..",
                "org.apache.fontbox..", "javax.xml.parsers..", "org.w3c.dom..", "org.xml.sax..",
                "javafx..", "atlantafx..", "javax.sound.sampled..")
                .because("a library that nobody decided on has no licence note and no reason").check(code);
    }

    @Test
    void noPackagesGoInCircles() {
        slices().matching("covewalk.(**)").should().beFreeOfCycles()
                .because("packages in a circle are one package that is hard to find one's way in").check(code);
    }

    @Test
    void nothingGoesOutOnTheNetwork() {
        noClasses().should().dependOnClassesThat().haveFullyQualifiedName("java.net.Socket")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.net.URLConnection")
                .orShould().dependOnClassesThat().resideInAnyPackage("java.net.http..")
                .because("sites have no network, and readings are nobody else's business").check(code);
    }

    @Test
    void everyPackageSaysWhatItIsFor() {
        Set<String> silent = new TreeSet<>();
        code.stream().map(JavaClass::getPackageName).distinct()
                .filter(name -> !Files.exists(Path.of("src/main/java", name.split("\\.")).resolve("package-info.java")))
                .forEach(silent::add);
        assertEquals(Set.of(), silent);
    }

    @Test
    void theRulesLookAtRealClassesAndCanFail() {
        assertTrue(code.contain(Main.class), "the compiled classes were not found");
        assertThrows(AssertionError.class, () -> arrowsNeverPointBack(
                new Room("covewalk.cli..", "covewalk.survey..", "untrue: commands use more than surveys")));
        assertThrows(AssertionError.class, () -> eachLibraryHasItsDoor("picocli..", "covewalk.report..", "untrue"));
    }
}
