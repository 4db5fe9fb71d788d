package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that no meter meant to write. Nothing of them is lost, and nothing else suffers. */
class HostileFilesTest {

    @TempDir
    Path temporary;

    @Test
    void setsAsideARowOfZeros() throws IOException {
        assertEquals("walk.csv:3: The row holds characters of value zero, as a broken copy leaves them. Export the file again.",
                only("CCT,Duv\n2712,0.0012\n\0\0\0\0\n2712,0.0012\n", 2));
    }

    @Test
    void setsAsideALineOfTenMillionCharacters() throws IOException {
        String line = "9".repeat(10_000_000);
        String words = only("CCT,Duv\n2712,0.0012\n" + line + ",0.0012\n2712,0.0012\n", 2);
        assertTrue(words.startsWith("walk.csv:3: CCT: \"" + "9".repeat(60) + "...\" is no number"), words);
    }

    @Test
    void setsAsideALineOfAMillionCells() throws IOException {
        assertEquals("walk.csv:3: The row has more than 1000 cells, which no table of readings has.",
                only("CCT,Duv\n2712,0.0012\n" + "1,".repeat(1_000_000) + "\n2712,0.0012\n", 2));
    }

    @Test
    void losesOneLineToAQuoteLeftOpenAndNoMore() throws IOException {
        String rest = "2712,0.0012\n".repeat(30);
        assertEquals("walk.csv:2: A quotation mark opens a cell and none closes it. Remove it, or close the cell.",
                onlyAtOnePlace("CCT,Duv\n\"2712,0.0012\n" + rest, 30));
    }

    @Test
    void readsAHundredColumns() throws IOException {
        String titles = "";
        String cells = "";
        for (int i = 0; i < 98; i++) {
            titles += "R" + (i + 100) + ",";
            cells += i + ",";
        }
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add(titles + "CCT,Duv\n" + cells + "2712,0.0012\n", IN_ROW_ORDER);
        assertEquals("1 98", result.kept() + " " + result.questions().size());
    }

    @Test
    void readsLineEndsOfEveryKindAndNoneAtTheEnd() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("CCT,Duv\r2712,0.0012\n2713,0.0012\r\n\r\n2714,0.0012\r2715,0.0012", IN_ROW_ORDER);
        assertEquals("4 ", result.kept() + " " + said(result));
        assertEquals(List.of("from walk.csv line 2", "from walk.csv line 3", "from walk.csv line 5", "from walk.csv line 6"),
                survey.log().stream().map(reading -> reading.note()).toList());
    }

    @Test
    void takesColumnsTwiceUnderOneTitleWhereTheyAgree() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals("1 ", survey.add("CCT,Duv,CCT\n2712,0.0012,2712\n", IN_ROW_ORDER).kept() + " ");
    }

    @Test
    void readsACellOverTwoLines() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("Note,CCT,Duv\n\"hall,\nleft\",2712,0.0012\nright,2712,0.0012\n", IN_ROW_ORDER);
        assertEquals(List.of("from walk.csv line 2; hall, left", "from walk.csv line 4; right"),
                survey.log().stream().map(reading -> reading.note()).toList());
    }

    @Test
    void putsNoFormulaOfAFileAtTheStartOfACellOfTheLog() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("Name,CCT,Duv\n=1+1,2712,0.0012\n", IN_ROW_ORDER);
        assertEquals("from walk.csv line 2; =1+1", survey.reading().note());
    }

    @Test
    void keepsANoteOfAPageShortInTheLogAndWholeInTheOriginal() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("Note,CCT,Duv\n" + "a".repeat(2_000_000) + ",2712,0.0012\n", IN_ROW_ORDER);
        assertTrue(survey.reading().note().length() < 500);
        assertTrue(Files.size(survey.file("originals/walk.csv")) > 2_000_000);
    }

    @Test
    void refusesAPicture() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        byte[] picture = new byte[5000];
        new Random(5).nextBytes(picture);
        ImportResult result = survey.add("picture.png", picture, IN_ROW_ORDER);
        assertTrue(said(result).startsWith("picture.png: No row names columns that are known; the file begins \""), said(result));
    }

    private String only(String file, int kept) throws IOException {
        return result(file, kept, IN_ROW_ORDER);
    }

    private String onlyAtOnePlace(String file, int kept) throws IOException {
        Stations atOne = new Stations.Evenly(SurveyOnDisk.typed("1"), SurveyOnDisk.typed("0"));
        return result(file, kept, SurveyOnDisk.at(atOne));
    }

    private String result(String file, int kept, ImportOptions options) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("walk.csv", file.getBytes(StandardCharsets.UTF_8), options);
        assertEquals(List.of(kept, 1, kept), List.of(result.kept(), result.setAside().size(), survey.log().size()));
        return said(result);
    }
}
