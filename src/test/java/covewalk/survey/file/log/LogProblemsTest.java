package covewalk.survey.file.log;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Seen;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.SurveyText;
import covewalk.survey.file.disk.RowBytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody sees whose readings.csv is wrong. */
class LogProblemsTest {

    private static final String SOUND = "1,C1,0.50,walk,A,1,2702,0.0004,,,,,310,2026-10-05T18:31,,\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void describe() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
    }

    private ReadSurvey read(String log) throws IOException {
        return SurveyFolder.at(SurveyText.folder(folder, SurveyText.SOUND, log)).read();
    }

    @ParameterizedTest(name = "{index}: {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        # a row behind a sound one | what is seen
        2,C1,1.00,,,,2702,0.0004,,,,,,,, | ~~
        2,C1,1.00,reference,A,2,,,0.4578,0.4101,,,,2026-10-05T18:31:07+02:00,,"a ""note"", with a comma" | ~~
        2,C1,1.00,,,,,,,,0.2597,0.5263,,,1,typed again | ~~
        2,C1,1.00,,,,,,,,,,,,1,read by mistake | ~~
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,2026-10-05T18:31, | R readings.csv:3: This row has 15 cells and the header has 16. Compare the commas with a row above.
        ,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: reading: This is empty. Fill it in.
        2,,1.00,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: cove: This is empty. Fill it in.
        2,C1,,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: position_m: This is empty. Fill it in.
        2,C1,1.0.0,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: position_m: 1.0.0 is no number. Write digits and one decimal mark.
        2,C1,1.00,dusk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: role: dusk is not known here. Write walk, reference or dark.
        2,C1,1.00,walk,A,0,2702,0.0004,,,,,310,,, | R readings.csv:3: round: 0 is no round. Write a whole number from 1 to 1000.
        2,C1,1.00,walk,A,1,2702,,,,,,310,,, | R readings.csv:3: duv: This is empty, but cct_k is filled in, and both belong together. Fill it in.
        2,C1,1.00,walk,A,1,,,,0.4101,,,310,,, | R readings.csv:3: x: This is empty, but y is filled in, and both belong together. Fill it in.
        2,C1,1.00,walk,A,1,,,,,,,310,,, | R readings.csv:3: This row has no colour. Fill in one of the pairs cct_k and duv, x and y, u_prime and v_prime.
        2,C1,1.00,walk,A,1,,,,,,,310,,1, | R readings.csv:3: note: This row takes back reading 1 without saying why. Add a note.
        2,C1,1.00,walk,A,1,over,0.0004,,,,,310,,, | R readings.csv:3: cct_k: over is no number. Write digits and one decimal mark.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,bright,,, | R readings.csv:3: lux: bright is no number. Write digits and one decimal mark.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,-911,,, | R readings.csv:3: lux: -911 lx is below 0, and there is no such illuminance. Correct it, or leave lux empty.
        2,C1,1.00,dark,A,1,2702,0.0004,,,,,-0.1,,, | R readings.csv:3: lux: -0.1 lx is below 0, and there is no such illuminance. Correct it, or leave lux empty.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,0,,, | ~~
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,200000,,, | ~~
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,200001,,, | W readings.csv:3: lux: 200001 lx is more than direct sun gives, which is some 100000 lx. Look at the meter and its unit again.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,1e308,,, | W readings.csv:3: lux: 1e308 lx is more than direct sun gives, which is some 100000 lx. Look at the meter and its unit again.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,5.10.2026 6:31 pm,, | W readings.csv:3: taken_at: 5.10.2026 6:31 pm is kept, but it is not a time as in 2026-10-05T18:30. Times in other forms cannot be compared.
        2,C1,1.00,walk,A,1,27,0.0004,,,,,310,,, | R readings.csv:3: cct_k: 27 K is outside 1000 to 20000 K; a white is some 1800 to 8000 K. Look at the meter again.
        2,C2,1.00,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: cove: There is no cove C2. Add the cove to the description, or correct its name.
        2,C1,1.00,walk,B,1,2702,0.0004,,,,,310,,, | R readings.csv:3: setup: There is no set-up B. Add it to the description, or correct its name.
        2,C1,10.5,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: position_m: 10.5 m lies outside cove C1, which is 10 m long. Correct the position, or the length of the cove.
        2,C1,-0.1,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: position_m: -0.1 m lies outside cove C1, which is 10 m long. Correct the position, or the length of the cove.
        1,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,, | R readings.csv:3: reading: Another reading has the id 1. Give this one another id.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,9, | R readings.csv:3: replaces: There is no earlier reading 9 to replace. Correct the name.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,2, | R readings.csv:3: replaces: There is no earlier reading 2 to replace. Correct the name.
        2,C1,1.00,dark,A,1,,,0.3000,0.6000,,,0.2,,, | ~~
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,,12" tape | R readings.csv:3: note: There is a quotation mark in the middle of this cell. Put the whole cell in quotation marks and double the one inside.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,,"tape" here | R readings.csv:3: note: Something follows the closing quotation mark of this cell. Take it out, or double the quotation marks inside the cell.
        2,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,,"tape | R readings.csv:3: A quotation mark is opened in this row and never closed, so where it ends cannot be told. Close it.
        """)
    void saysWhatIsWrongWithARow(String row, String seen) throws IOException {
        assertEquals(seen, Seen.all(read(SurveyText.HEADER + "\n" + SOUND + row + "\n").problems()));
    }

    @ParameterizedTest(name = "{index}: {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        # header | what is seen
        reading;cove;position_m;cct_k;duv | R readings.csv:1: The columns are parted by semicolons. Save the log with commas between columns and points in numbers.
        reading,position_m,cct_k,duv | R readings.csv:1: The header lacks cove. Add what is missing; the first line names the columns.
        1,C1,0.50,2702,0.0004 | R readings.csv:1: The header lacks reading, cove, position_m. Add what is missing; the first line names the columns.
        reading,cove,position_m,cct_k,x,v_prime | R readings.csv:1: The header has no pair of colour columns. It needs cct_k and duv, or x and y, or u_prime and v_prime.
        reading,cove,position_m,cct_k,duv,Duv | R readings.csv:1: duv: The header names duv twice. Rename one of the two columns.
        """)
    void saysWhatIsWrongWithTheHeader(String header, String seen) throws IOException {
        assertEquals(seen, Seen.all(read(header + "\n").problems()));
    }

    @Test
    void tellsEveryRowAtOnceAndKeepsTheSoundOnes() throws IOException {
        ReadSurvey read = read(SurveyText.HEADER + "\n" + SOUND + "2,C1,1.00,walk,A,x,27o2,0.0004,,,,,310,,,\n"
                + SOUND.replace("1,C1", "3,C1") + "4,C1\n");
        assertEquals("""
                R readings.csv:3: round: x is no round. Write a whole number from 1 to 1000.
                R readings.csv:3: cct_k: 27o2 is no number. Write digits and one decimal mark.
                R readings.csv:5: This row has 2 cells and the header has 16. Compare the commas with a row above.""",
                Seen.all(read.problems()));
        assertEquals(2, read.log().size());
        assertTrue(read.refused());
    }

    @Test
    void problemsBehindANoteOfTwoLinesHaveTheLineOfTheFile() throws IOException {
        ReadSurvey read = read(SurveyText.HEADER + "\n" + SOUND.replace(",,\n", ",,\"two\nlines\"\n") + "2,C1\n");
        assertEquals("R readings.csv:4: This row has 2 cells and the header has 16. Compare the commas with a row above.",
                Seen.all(read.problems()));
        assertEquals("two\nlines", read.log().get(0).note());
    }

    @Test
    void aWrongReadingIsCuredByALaterRow() throws IOException {
        String wrong = "2,C9,99,walk,A,1,27,0.0004,,,,,310,,,\n";
        assertEquals("", Seen.all(read(SurveyText.HEADER + "\n" + SOUND + wrong
                + "3,C1,1.00,walk,A,1,2702,0.0004,,,,,310,,2,mistyped\n").problems()));
        assertEquals("", Seen.all(read(SurveyText.HEADER + "\n" + SOUND + wrong + "3,C1,1.00,walk,A,1,,,,,,,,,2,mistyped\n")
                .problems()));
    }

    @Test
    void twoCorrectionsOfOneReadingThatBothStandAreAWarning() throws IOException {
        String log = SurveyText.HEADER + "\n" + SOUND + SOUND.replace("1,C1", "2,C1").replace(",,\n", ",1,\n")
                + SOUND.replace("1,C1", "3,C1").replace(",,\n", ",1,\n");
        assertEquals("W readings.csv:4: replaces: Reading 1 is replaced by 2 already, and both of them count."
                + " Take back the one that is wrong.", Seen.all(read(log).problems()));
        assertEquals("", Seen.all(read(log + "4,C1,0.5,,,,,,,,,,,,3,typed twice\n").problems()));
    }

    @Test
    void coarseDigitsAreToldOnceWithTheNumberOfReadings() throws IOException {
        String log = SurveyText.HEADER + "\n" + SOUND.replace("0.0004", "0.000") + SOUND.replace("1,C1", "2,C1").replace("0.0004", "0.001");
        assertEquals("""
                W readings.csv:2: duv: A Duv to three decimals costs about half a step. Enter four decimals if the meter shows them.
                W readings.csv:2: duv: The same holds for 2 readings in all.""", Seen.all(read(log).problems()));
    }

    @Test
    void tooMuchLightIsToldOnceWithTheNumberOfReadings() throws IOException {
        String log = SurveyText.HEADER + "\n" + SOUND.replace("310", "310000") + SOUND.replace("1,C1", "2,C1").replace("310", "320000");
        assertEquals("""
                W readings.csv:2: lux: 310000 lx is more than direct sun gives, which is some 100000 lx. Look at the meter and its unit again.
                W readings.csv:2: lux: The same holds for 2 readings in all.""", Seen.all(read(log).problems()));
    }

    @Test
    void aReadingWhereNoReelLiesIsAWarning() throws IOException {
        ReadSurvey read = SurveyFolder.at(SurveyText.folder(folder, SurveyText.SOUND.replace("\"fromM\": 5.0", "\"fromM\": 5.2"),
                SurveyText.HEADER + "\n" + SOUND.replace("0.50", "5.1"))).read();
        assertEquals("W readings.csv:2: position_m: At 5.1 m of cove C1 no reel is placed. Look at the position and the"
                + " placements again.", Seen.all(read.problems()));
    }

    @Test
    void bytesThatAreNoTextAreTold() throws IOException {
        Files.write(folder.resolve("readings.csv"), (SurveyText.HEADER + "\n" + SOUND.replace(",,\n", ",,Grün\n")).getBytes(ISO_8859_1));
        assertEquals("R readings.csv:2: note: This text is not UTF-8: another program has rewritten it. Keep this file as it is, and put the log back from a copy.",
                Seen.all(SurveyFolder.at(folder).read().problems()));
        Files.write(folder.resolve("readings.csv"), (SurveyText.HEADER + "\n" + SOUND).getBytes(UTF_16));
        assertTrue(Seen.all(SurveyFolder.at(folder).read().problems())
                .startsWith("R readings.csv:1: The log is not UTF-8 any more: another program has rewritten it. Keep this file as it is, and put the log back from a copy."));
        String zeros = SurveyText.HEADER + "\n" + SOUND.replace("walk", "\0\0\0\0");
        assertEquals("R readings.csv:2: role: There is a character in this row that no text holds, as after a power cut or with"
                + " line ends of an old kind. Look at the row in a text editor and restore it from a copy.", Seen.all(read(zeros).problems()));
        assertTrue(read((SurveyText.HEADER + "\n" + SOUND).replace('\n', '\r')).refused());
        assertTrue(read(SurveyText.HEADER + "\n" + SOUND + "x".repeat(RowBytes.LONGEST_ROW + 1)).refused());
    }

    @Test
    void aByteOrderMarkCrLfAndBlankLinesAreFine() throws IOException {
        ReadSurvey read = read("\ufeff" + (SurveyText.HEADER + "\n" + SOUND + "\n").replace("\n", "\r\n"));
        assertEquals("", Seen.all(read.problems()));
        assertEquals("2026-10-05T18:31", read.log().get(0).takenAt());
        assertEquals("0.50", read.log().get(0).positionM().text());
    }

    @Test
    void anUnfinishedLastLineIsNotReadAndNothingIsWritten() throws IOException {
        String log = SurveyText.HEADER + "\n" + SOUND + SOUND.replace("1,C1", "2,C1").strip();
        ReadSurvey read = read(log);
        assertEquals("W readings.csv:3: The last line is unfinished and was not read. If no other program is writing it, it is"
                + " set aside when the survey is next opened for writing.", Seen.all(read.problems()));
        assertEquals(1, read.log().size());
        assertLogIs(log);
    }

    private void assertLogIs(String log) throws IOException {
        assertEquals(log, Files.readString(folder.resolve("readings.csv"), UTF_8));
    }

    @Test
    void noLogYetIsAnEmptyOne() throws IOException {
        assertEquals(0, SurveyFolder.at(folder).read().log().size());
        assertEquals(0, read("").log().size());
    }
}
