package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.digits;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.Reading;
import covewalk.survey.TypedColour;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kinds of files that meters write (common practice, no source); all values invented. */
class VariantsOfExportsTest {

    @TempDir
    Path temporary;

    /** One row in each; a stroke stands for a line end, and what the log has of it follows. */
    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '!', textBlock = """
        CCT,Duv|2712,0.0012                            ! 2712 0.0012    ! 0 ! commas
        CCT;Duv|2712;0,0012                            ! 2712 0.0012    ! 0 ! semicolons and decimal commas
        Tcp [K]\\tD(u,v)|2712\\t-0.0004                ! 2712 -0.0004   ! 0 ! tabs, a unit in brackets, a symbol with a comma
        Tc (K);Delta uv|2 712;0,0012                   ! 2712 0.0012    ! 0 ! a blank between thousands
        Color temp;d_uv|2\u202f712;0,0012              ! 2712 0.0012    ! 0 ! a narrow no-break blank between thousands
        Color temp;d_uv|2\u00a0712;0,0012              ! 2712 0.0012    ! 0 ! a no-break blank between thousands
        Farbtemperatur;duv|2.712;0,0012                ! 2712 0.0012    ! 0 ! a point between thousands where other cells show decimal commas
        CCT,D(u,v)|2712,0.0012                         ! 2712 0.0012    ! 0 ! a title that holds the separator
        CCT,Duv|"2,712",0.0012                         ! 2712 0.0012    ! 0 ! a comma between thousands where other cells show decimal points
        相関色温度,偏差Duv|2712,0.0012                 ! 2712 0.0012    ! 0 ! Japanese
        相关色温(K),Duv|2712,0.0012                    ! 2712 0.0012    ! 0 ! Chinese
        Température de couleur,Duv|2712,0.0012         ! 2712 0.0012    ! 0 ! French
        CCT;Duv|K;-|2712;0,0012                        ! 2712 0.0012    ! 0 ! units in a second row
        CCT;Duv|[K];[-]|2712;0,0012                    ! 2712 0.0012    ! 0 ! units in brackets in a second row
        CCT,Duv|2712 K,0.0012                          ! 2712 0.0012    ! 0 ! a unit in the cell
        Meter AB;rev 2|Site;Hall||CCT;Duv|2712;0,0012  ! 2712 0.0012    ! 0 ! lines before the header
        sep=;|CCT;Duv|2712;0,0012                      ! 2712 0.0012    ! 0 ! a line that names the separator
        CCT;2712|Duv;0,0012                            ! 2712 0.0012    ! 0 ! one file per shot
        Date;2026-10-05|CCT;2712;K|Duv;0.0012;-        ! 2712 0.0012    ! 0 ! one file per shot with units
        CCT: 2712|Duv: 0.0012|Time: 19:30:00           ! 2712 0.0012    ! 0 ! one file per shot with colons
        """)
    void givesCctAndDuvAsTyped(String file, String expected, int setAside, String what) throws IOException {
        assertEquals(expected, digits(colourOf(file, setAside).cctDuv()), what);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '!', textBlock = """
        x,y                    ! x and y of CIE 1931
        CIE x,CIE y            !
        Chroma x,Chroma y      !
        CIE1931_x,CIE1931_y    !
        色度x,色度y            !
        """)
    void knowsTheNamesOfXAndY(String header) throws IOException {
        assertEquals("0.4580 0.4102", digits(colourOf(header + "|0.4580,0.4102", 0).xy()));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '!', textBlock = """
        u',v'                  ! an apostrophe
        u′,v′                  ! a prime
        u’,v’                  ! a curly apostrophe
        u`,v`                  ! a grave accent
        u´,v´                  ! an acute accent
        uprime,v_prime         ! words
        CIE 1976 u,CIE 1976 v  ! the year in place of the prime
        """)
    void knowsEveryKindOfPrime(String header) throws IOException {
        assertEquals("0.2601 0.5301", digits(colourOf(header + "|0.2601,0.5301", 0).uvPrime()));
    }

    @Test
    void takesABigXForATristimulusValueAndNotForTheChromaticity() throws IOException {
        assertEquals("0.4580 0.4102", digits(colourOf("X,Y,Z,x,y|51.2,45.9,14.8,0.4580,0.4102", 0).xy()));
    }

    private TypedColour colourOf(String file, int setAside) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add(file.replace("|", "\r\n").replace("\\t", "\t"), IN_ROW_ORDER);
        assertEquals(List.of(), said(result.refusals()));
        assertEquals(setAside, result.setAside().size(), said(result));
        return survey.reading().colour().orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"})
    void readsEachEncoding(String charset) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        String mark = charset.startsWith("UTF") ? "\uFEFF" : "";
        survey.add(mark + "Bezeichnung;CCT;Duv\r\nK\u00fcche;2712;0,0012\r\n", Charset.forName(charset), IN_ROW_ORDER);
        assertEquals("from walk.csv line 2; K\u00fcche", survey.reading().note());
    }

    @Test
    void readsUtf16WithoutAMark() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT\tDuv\r\n2712\t0.0012\r\n", StandardCharsets.UTF_16LE, IN_ROW_ORDER);
        assertEquals("2712 0.0012", digits(survey.reading().colour().orElseThrow().cctDuv()));
    }

    @Test
    void readsAnOlderJapaneseEncodingByItsHeader() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("測定名,相関色温度,偏差Duv\r\n入口,2712,0.0012\r\n", Charset.forName("Shift_JIS"), IN_ROW_ORDER);
        assertEquals("from walk.csv line 2; 入口", survey.reading().note());
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '!', textBlock = """
        lux    ! 451.2  ! 451.2 | from walk.csv line 2               ! lux as typed
        Ev [lx]! 451    ! 451   | from walk.csv line 2               ! the symbol and the unit
        fc     ! 41.9   ! 451   | from walk.csv line 2; fc 41.9      ! foot-candles, 41.9 x 10.76391 = 451.008 (1/0.3048^2)
        E [fc] ! 41.92  ! 451.2 | from walk.csv line 2; E [fc] 41.92 ! one decimal less than typed, as a foot-candle is ten lux
        klx    ! 0.4512 ! 451.2 | from walk.csv line 2; klx 0.4512   ! kilolux, exactly
        lux    ! Over   !       | from walk.csv line 2; lux Over     ! out of range: the colour is kept and the mark noted
        lux    ! -----  !       | from walk.csv line 2; lux -----    ! out of range
        L      ! 88.1   ! 88.1  | from walk.csv line 2; L 88.1       ! luminance in its place, noted
        """)
    void keepsBrightnessInLux(String title, String cell, String expected, String why) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT,Duv," + title + "\n2712,0.0012," + cell + "\n", IN_ROW_ORDER);
        Reading reading = survey.reading();
        assertEquals(expected.replaceAll("\\s+", " ").strip(),
                (reading.lux().map(lux -> lux.text()).orElse("") + " | " + reading.note()).strip(), why);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '!', textBlock = """
        Date;Time|05.10.2026;19:31:05|06.10.2026;19:32            ! 2026-10-05T19:31:05 ! points mean day first
        Date;Time|2026/10/05;7:31 PM|2026/10/05;7:32 PM           ! 2026-10-05T19:31:00 ! year first, 12 h clock
        Date;Time|2026-10-05;12:05 a.m.|2026-10-05;12:06 a.m.     ! 2026-10-05T00:05:00 ! twelve a.m. is midnight
        Date/Time;No|10/05/2026 7:31:05 PM;1|10/13/2026 7:31 PM;2 ! 2026-10-05T19:31:05 ! a 13 in second place: month first
        Date/Time;No|05/10/2026 19:31;1|13/10/2026 19:31;2        ! 2026-10-05T19:31:00 ! a 13 in first place: day first
        Timestamp;No|2026-10-05T19:31:05+02:00;1|2026-10-05T19:31:05Z;2 ! 2026-10-05T19:31:05+02:00 ! ISO 8601 with an offset
        日時;No|2026年10月5日 午後7:31;1|2026年10月5日 午後7:32;2 ! 2026-10-05T19:31:00 ! Japanese
        """)
    void readsWhenAReadingWasTaken(String file, String expected, String why) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        String[] rows = file.split("\\|");
        survey.add("CCT;Duv;" + rows[0] + "\n2712;0,0012;" + rows[1] + "\n2712;0,0012;" + rows[2] + "\n", IN_ROW_ORDER);
        assertEquals(expected, survey.log().get(0).takenAt(), why);
    }

    @Test
    void keepsADateThatCannotBeToldAsItWasWritten() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("CCT,Duv,Date,Time\n2712,0.0012,03/04/2026,19:30\n2710,0.0012,05/04/2026,19:31\n", IN_ROW_ORDER);
        assertEquals("walk.csv:2: In 2 of 2 rows the date cannot be told, the first being \"03/04/2026 19:30\": day or month first, "
                + "or no time of day. It stands in the note as it was written.", said(result));
        assertEquals("from walk.csv line 2; taken 03/04/2026 19:30", survey.log().get(0).note());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '!', textBlock = """
        position_m     ! 3.50             ! 3.50  ! from walk.csv line 2
        Position [mm]  ! 3500             ! 3.500 ! from walk.csv line 2; Position [mm] 3500
        Position (cm)  ! 350              ! 3.500 ! from walk.csv line 2; Position (cm) 350
        Position [ft]  ! 10               ! 3.048 ! from walk.csv line 2; Position [ft] 10
        Position       ! 12' 6 1/2"       ! 3.823 ! from walk.csv line 2; Position 12' 6 1/2"
        Position       ! 12 ft 6.5 in     ! 3.823 ! from walk.csv line 2; Position 12 ft 6.5 in
        Position       ! 3500 mm          ! 3.500 ! from walk.csv line 2; Position 3500 mm
        位置 [m]       ! 3.5              ! 3.5   ! from walk.csv line 2
        """)
    void readsPositionsInMetresAndInFeet(String title, String cell, String metres, String note) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT;Duv;" + title + "\n2712;0.0012;" + cell + "\n", SurveyOnDisk.NOTHING_SAID);
        assertEquals(metres + " " + note, survey.reading().positionM().text() + " " + survey.reading().note());
    }
}
