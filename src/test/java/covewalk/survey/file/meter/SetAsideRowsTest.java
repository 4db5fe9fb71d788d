package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows that cannot be read: what the user is told, word for word, and that all others are kept. */
class SetAsideRowsTest {

    @TempDir
    Path temporary;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
        CCT,Duv        ! 2712,Over        ! walk.csv:3: Duv: The meter wrote "Over" where a number belongs: it had no value to give. Read the place again if it matters.
        CCT,Duv        ! Under,0.0012     ! walk.csv:3: CCT: The meter wrote "Under" where a number belongs: it had no value to give. Read the place again if it matters.
        CCT,Duv        ! -----,-----      ! walk.csv:3: CCT: The meter wrote "-----" where a number belongs: it had no value to give. Read the place again if it matters.
        CCT,Duv        ! N/A,N/A          ! walk.csv:3: CCT: The meter wrote "N/A" where a number belongs: it had no value to give. Read the place again if it matters.
        CCT,Duv        ! 2712,0.0O12      ! walk.csv:3: Duv: "0.0O12" is no number, or can be read as two. Write it with a point or a comma before the decimals and nothing between thousands.
        CCT,Duv        ! 2712,            ! walk.csv:3: The row has no colour: CCT and Duv, x and y, or u' and v' are needed, both of a pair.
        CCT,Duv        ! 2712,0,0012      ! walk.csv:3: The row has 3 cells under a header of 2. A decimal comma in a file separated by commas does this: export with another separator.
        CCT,Duv        ! 27120,0.0012     ! walk.csv:3: CCT: 27120 K is outside 1000 to 20000 K; a white is some 1800 to 8000 K. Look at the meter again.
        CCT,Duv        ! 2712,12          ! walk.csv:3: Duv: 12 is outside -0.05 to 0.05. Duv is a small fraction such as 0.0034; some meters show it in thousandths or per cent. Look at the meter again.
        CCT,Duv        ! "2712,0.0012     ! walk.csv:3: A quotation mark opens a cell and none closes it. Remove it, or close the cell.
        CCT,Duv        ! CCT,Duv          ! walk.csv:3: The row repeats the header.
        x,y            ! 0.9,0.8          ! walk.csv:3: y: x 0.9 and y 0.8 together exceed 1, which no colour does. Look at the meter again.
        CCT,Duv,No     ! Average,,        ! walk.csv:3: The row is called "Average": a sum of other rows and no reading.
        No,CCT,Duv     ! Max,2712,0.0012  ! walk.csv:3: The row is called "Max": a sum of other rows and no reading.
        No,CCT,Duv     ! 平均,2712,0.0012 ! walk.csv:3: The row is called "平均": a sum of other rows and no reading.
        """)
    void saysWhyAndKeepsTheOthers(String header, String row, String words) throws IOException {
        String good = header.startsWith("x") ? "0.4580,0.4102" : header.startsWith("No") ? "1,2712,0.0012" : "2712,0.0012";
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add(header + "\n" + good + "\n" + row + "\n" + good + "\n", IN_ROW_ORDER);
        assertEquals(words, said(result));
        assertEquals("3 = 2 + 1", result.rows() + " = " + result.kept() + " + " + result.setAside().size());
    }

    /** White near 2700 K is u 0.26, v 0.35 in 1960 and u' 0.26, v' 0.53 in 1976 (v' = 1.5 v, CIE 15). */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
        u,v              ! 0.2601,0.3512 ! walk.csv:2: v: The columns say u and v without a prime, and v 0.3512 looks like CIE 1960 (white is near 0.35 there, v' near 0.52). Export x and y, u' and v', or CCT and Duv.
        u,v              ! 0.2601,0.5268 ! walk.csv:2: v: The columns say u and v without a prime, and v 0.5268 looks like v' of CIE 1976. If it is, say so: --map u=u_prime --map v=v_prime.
        CIE 1960 u,v1960 ! 0.2601,0.3512 ! walk.csv:2: v1960: Only u and v of CIE 1960 are given. The log keeps the digits as typed, and v' (1.5 v) would have others. Export x and y, u' and v', or CCT and Duv.
        u',v'            ! 0.2601,0.3512 ! walk.csv:2: v': 0.3512 is no v' of a white light, which is near 0.52; v of CIE 1960 is near 0.35. Export x and y, or u' and v' of CIE 1976.
        """)
    void takesNoUAndVOfTheOneDiagramForThoseOfTheOther(String header, String row, String words) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals(words, said(survey.add(header + "\n" + row + "\n", IN_ROW_ORDER)));
    }

    @Test
    void keepsARowWithUAndVOf1960WhereAnotherPairIsThere() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("u,v,x,y\n0.2601,0.3512,0.4580,0.4102\n", IN_ROW_ORDER);
        assertEquals("1 ", result.kept() + " " + said(result));
    }

    @Test
    void notesTheHalfOfAPairAndTheMarkInPlaceOfANumber() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("x,y,CCT,Duv\n0.4580,0.4102,2734,Over\n", IN_ROW_ORDER);
        assertEquals("from walk.csv line 2; CCT 2734; Duv Over", survey.reading().note());
    }

    @ParameterizedTest(name = "position {0}")
    @CsvSource(delimiter = '!', textBlock = """
        13.0    ! walk.csv:2: position_m: 13.0 m is outside cove C1, which runs from 0 to 12.5 m.
        -1      ! walk.csv:2: position_m: -1 m is outside cove C1, which runs from 0 to 12.5 m.
        ''      ! walk.csv:2: position_m: The row has no position.
        window  ! walk.csv:2: position_m: "window" is no position. Write metres, or the unit with it: 3.5, 3500 mm, 12' 6 1/2".
        """)
    void setsAsideWhatLiesNowhere(String position, String words) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals(words, said(survey.add("CCT,Duv,position_m\n2712,0.0012," + position + "\n", SurveyOnDisk.NOTHING_SAID)));
    }

    @Test
    void writesTheRowWithItsReasonIntoTheFileForIt() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT,Duv\n2712,0.0012\n2712,Over\n", IN_ROW_ORDER);
        assertEquals("source,line,column,reason,row\nwalk.csv,3,Duv,\"The meter wrote \"\"Over\"\" where a number belongs: it had no value "
                + "to give. Read the place again if it matters.\",\"2712,Over\"\n", Files.readString(survey.file("set-aside.csv")));
    }

    @Test
    void countsARowSetAsideAsOneOfTheStations() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT,Duv\n2712,0.0012\n2712,Over\n2715,0.0012\n", IN_ROW_ORDER);
        assertEquals("1.0", survey.log().get(1).positionM().text());
    }
}
