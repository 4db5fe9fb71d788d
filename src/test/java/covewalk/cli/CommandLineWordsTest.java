package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody reads who got the command line wrong. */
class CommandLineWordsTest {

    @ParameterizedTest(name = "covewalk {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        chekc                        | covewalk: there is no command chekc. There are: convert, check, plan, report, punch, verify, import.
        --foo                        | covewalk: there is no option --foo here. There are: --help, --version.
        check                        | covewalk check: SURVEY is missing: the survey's folder.
        check a b                    | covewalk check: b is one name too many. A name with spaces in it goes between quotation marks; --help shows what is expected.
        check a --worse              | covewalk check: there is no option --worse here. There are: --json, --limit, --worst, --explain, --cove, --correct-drift, --language, --help, --version.
        check a --language fr        | covewalk check: --language: fr is no language that Covewalk speaks. Write one of: en, de.
        report a --out d --language  | covewalk report: --language CODE is missing: en, the default, or de: the language of sentences and of decimal marks; JSON, codes in tables and this command's own messages stay as they are.
        plan a --language german     | covewalk plan: --language: german is no language that Covewalk speaks. Write one of: en, de.
        check a --limit              | covewalk check: --limit STEPS is missing: judge by this many steps between neighbours, instead of the survey's own limit.
        check a --limit two          | covewalk check: --limit: two is no number of steps above 0, up to 100. Write it like 2 or 2.5.
        check a --limit 0            | covewalk check: --limit: 0 is no number of steps above 0, up to 100. Write it like 2 or 2.5.
        check a --limit -1           | covewalk check: --limit: -1 is no number of steps above 0, up to 100. Write it like 2 or 2.5.
        check a --limit 101          | covewalk check: --limit: 101 is no number of steps above 0, up to 100. Write it like 2 or 2.5.
        check a --limit NaN          | covewalk check: --limit: NaN is no number of steps above 0, up to 100. Write it like 2 or 2.5.
        check a --limit 2 --limit 3  | covewalk check: --limit is given more than once. Give it once.
        check a --json=yes           | covewalk check: --json takes no value. Leave out what follows it.
        report a                     | covewalk report: --out DIR is missing: the folder to write into; it is made where it is missing.
        report --out d               | covewalk report: SURVEY is missing: the survey's folder.
        report a --out d --json      | covewalk report: there is no option --json here. There are: --out, --for, --reel, --paper, --units, --correct-drift, --language, --help, --version.
        report a --out d --for owner | covewalk report: --for: owner is no reader that a page is made for. Write specifier or warranty.
        punch                        | covewalk punch: SURVEY is missing: the survey's folder.
        punch a --item               | covewalk punch: --item N is missing: the item's number; several with commas between them.
        punch a --item 0             | covewalk punch: --item: 0 is no item number. Write whole numbers from 1, with commas between them.
        punch a --item 1,two         | covewalk punch: --item: two is no item number. Write whole numbers from 1, with commas between them.
        punch a --due 1 --due 2      | covewalk punch: --due is given more than once. Give it once.
        punch a --due soon           | --due: soon is no date. Write it as 2026-12-01.
        punch a --done 30.11.2026    | --done: 30.11.2026 is no date, alone or with a space and initials behind it. Write it as 2026-12-01 or 2026-12-01 AB.
        punch a --done 2026-12-01AB  | --done: 2026-12-01AB is no date, alone or with a space and initials behind it. Write it as 2026-12-01 or 2026-12-01 AB.
        punch a --done 2026-02-30    | --done: There is no day 2026-02-30. Look at its month and its day again.
        punch a --due 2026-13-01     | --due: There is no day 2026-13-01. Look at its month and its day again.
        punch a --accepted 2026-12-02 | --accepted: 2026-12-02 is no date with initials behind it. Write it as 2026-12-02 AB.
        punch a --note=              | --note: nothing is given. Write a hyphen to clear what stands there.
        verify                       | covewalk verify: SURVEY is missing: the survey's folder.
        verify survey-demo --against x | x is no code of a seal, which has 16 letters and digits in groups of four. Look at the paper again.
        verify survey-demo           | This survey was never sealed. Its report seals it.
        verify no-such-folder        | There is no such folder. Give the folder of a survey.
        import a                     | covewalk import: FILE is missing: the file the meter exported.
        import                       | covewalk import: SURVEY is missing: the survey's folder.
        import a b --map cct         | covewalk import: --map: cct does not say COLUMN=FIELD. Write the column's title or number, an equals sign and the field, like "Colour temp.=cct_k".
        import a b --map =cct_k      | covewalk import: --map: =cct_k does not say COLUMN=FIELD. Write the column's title or number, an equals sign and the field, like "Colour temp.=cct_k".
        import a b --start here      | covewalk import: --start: here is no length. Write it like 0.5, 500 mm, 1.5 ft or 1' 8".
        import a b --every 1,5,2     | covewalk import: --every: 1,5,2 is no length. Write it like 0.5, 500 mm, 1.5 ft or 1' 8".
        convert a b                  | covewalk convert: b is one name too many. A name with spaces in it goes between quotation marks; --help shows what is expected.
        convert --digits 0           | covewalk convert: --digits: 0 is no number from 1 to 12. Write it like 6.
        convert --digits 13          | covewalk convert: --digits: 13 is no number from 1 to 12. Write it like 6.
        convert --digits six         | covewalk convert: --digits: six is no number from 1 to 12. Write it like 6.
        """)
    void saysWhatIsWrongAndWhatThereIs(String line, String words) {
        Run run = FrontDoor.run(line.strip().split(" +"));
        assertEquals(words + "\n", run.err());
        assertEquals("", run.out());
        assertEquals(2, run.code());
    }

    @Test
    void anEmptyNameIsNoFolder() {
        assertEquals("covewalk check: SURVEY: the name is empty. Give the name of a file or folder.\n", FrontDoor.run("check", "").err());
    }

    @Test
    void aNameThatNoSystemTakesIsRefused() {
        assertEquals("covewalk check: SURVEY: no file or folder can have that name. Check it for stray characters.\n",
                FrontDoor.run("check", "a\0b").err());
    }

    @Test
    void aloneWithoutAScreenItSaysSoAndListsTheCommands() {
        Run run = FrontDoor.run();
        assertTrue(run.err().startsWith("There is no screen here to open the field app on. These commands need none.\n"), run.err());
        for (String command : new String[] {"convert", "check", "plan", "report", "punch", "verify", "import"}) {
            assertTrue(run.err().contains("\n  " + command + " "), command);
        }
        assertEquals("", run.out());
        assertEquals(2, run.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "convert --help", "check --help", "plan --help", "report --help", "punch --help", "verify --help", "import --help"})
    void helpIsForReadingOn(String line) {
        Run run = FrontDoor.run(line.split(" "));
        assertTrue(run.out().contains("Usage: covewalk"), run.out());
        assertEquals("", run.err());
        assertEquals(0, run.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "convert --help", "check --help", "plan --help", "report --help", "punch --help", "verify --help", "import --help"})
    void helpNamesTheExitCodesAndFitsOnATerminal(String line) {
        String help = FrontDoor.run(line.split(" ")).out();
        assertTrue(help.contains("Exit code 0"), help);
        assertTrue(help.lines().allMatch(row -> row.length() <= 80), help);
    }

    @Test
    void theVersionIsThatOfTheBuild() {
        Run run = FrontDoor.run("--version");
        assertTrue(run.out().matches("covewalk \\d+\\.\\d+\\.\\d+\\S*\n"), run.out());
        assertEquals(0, run.code());
    }
}
