package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.digits;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static covewalk.survey.file.meter.SurveyOnDisk.typed;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeterImportTest {

    private static final String WALK = "No,CCT,Duv\n1,2712,0.0012\n2,2715,0.0011\n3,2710,Over\n";

    @TempDir
    Path temporary;

    @Test
    void keepsTheFileByteForByte() throws IOException {
        byte[] bytes = "\uFEFFCCT;Duv\r2712;0,0012\n\r\n\"".getBytes(StandardCharsets.UTF_16LE);
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("walk.csv", bytes, IN_ROW_ORDER);
        assertArrayEquals(bytes, Files.readAllBytes(survey.file("originals/walk.csv")));
    }

    @Test
    void addsNothingTheSecondTime() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, IN_ROW_ORDER);
        String log = Files.readString(survey.file("readings.csv"));
        String aside = Files.readString(survey.file("set-aside.csv"));
        ImportResult again = survey.add("renamed.csv", WALK.getBytes(StandardCharsets.UTF_8), IN_ROW_ORDER);
        assertEquals("0 2 1", again.kept() + " " + again.alreadyThere() + " " + again.setAside().size());
        assertEquals(List.of("renamed.csv: 2 of 3 rows are in the log already, from this same file (originals/walk.csv); "
                + "they were not added again."), said(again.warnings()));
        assertEquals(log + aside, Files.readString(survey.file("readings.csv")) + Files.readString(survey.file("set-aside.csv")));
    }

    @Test
    void completesAnImportThatWasCutShort() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, IN_ROW_ORDER);
        List<String> log = Files.readAllLines(survey.file("readings.csv"));
        Files.write(survey.file("readings.csv"), log.subList(0, log.size() - 1)); // as if the power had failed before the last row
        Files.delete(survey.file("set-aside.csv"));
        ImportResult again = survey.add(WALK, IN_ROW_ORDER);
        assertEquals("1 1 1", again.kept() + " " + again.alreadyThere() + " " + again.setAside().size());
        assertEquals(log, Files.readAllLines(survey.file("readings.csv")));
        assertTrue(Files.exists(survey.file("set-aside.csv")));
    }

    @Test
    void knowsTheRowsOfAMemoryThatIsExportedAgain() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, IN_ROW_ORDER);
        ImportResult later = survey.add("later.csv", (WALK + "4,2708,0.0010\n").getBytes(StandardCharsets.UTF_8), IN_ROW_ORDER);
        assertEquals("1 2 1", later.kept() + " " + later.alreadyThere() + " " + later.setAside().size());
        assertEquals(List.of("later.csv: 2 of 4 rows are in the log already, letter for letter from a file imported before; "
                + "they were not added again. This file is kept as originals/later.csv."), said(later.warnings()));
    }

    @Test
    void addsTheCorrectedRowOfAFileAndNoOtherTwice() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, IN_ROW_ORDER);
        survey.add(WALK.replace("Over", "0.0013"), IN_ROW_ORDER);
        assertEquals(List.of("0.0", "0.5", "1.0"), survey.log().stream().map(reading -> reading.positionM().text()).toList());
        assertEquals("from walk-2.csv line 4; 3", survey.log().get(2).note());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        semicolons and decimal commas        | CCT;Duv;Time~2712;0,0020;2026-10-05 20:15:00~2715;0,0010;2026-10-05 20:16:00
        zeros that a spreadsheet leaves away | CCT,Duv,Time~2712,0.002,2026-10-05 20:15:00~2715,0.001,2026-10-05 20:16:00
        another way to write the time        | CCT,Duv,Time~2712,0.0020,5.10.2026 20:15~2715,0.0010,5.10.2026 20:16
        """)
    void knowsReadingsOfAFileThatWasSavedAgain(String with, String saved) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT,Duv,Time\n2712,0.0020,2026-10-05 20:15:00\n2715,0.0010,2026-10-05 20:16:00\n", IN_ROW_ORDER);
        ImportResult again = survey.add("again.csv", saved.replace('~', '\n').getBytes(StandardCharsets.UTF_8), IN_ROW_ORDER);
        assertEquals("0 2", again.kept() + " " + again.alreadyThere(), with);
        assertEquals("again.csv: 2 of 2 rows are in the log already, with the same cove, position, time and values; "
                + "they were not added again. This file is kept as originals/again.csv.", said(again.warnings()).get(0));
    }

    @ParameterizedTest(name = "another {0}")
    @CsvSource(textBlock = """
        position,      'position_m,CCT,Duv,Time~2,2712,0.0012,2026-10-05 20:15:00~'
        second,        'position_m,CCT,Duv,Time~1,2712,0.0012,2026-10-05 20:15:01~'
        value,         'position_m,CCT,Duv,Time~1,2713,0.0012,2026-10-05 20:15:00~'
        pair of values,'position_m,x,y,Time~1,0.4580,0.4102,2026-10-05 20:15:00~'
        """)
    void addsAReadingWith(String what, String other) throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("position_m,CCT,Duv,Time\n1,2712,0.0012,2026-10-05 20:15:00\n", SurveyOnDisk.NOTHING_SAID);
        assertEquals(1, survey.add(other.replace('~', '\n'), SurveyOnDisk.NOTHING_SAID).kept(), what);
    }

    @Test
    void knowsAsManyReadingsAsTheLogHasAndNoMore() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        String repeat = "1;2712;0,0012;2026-10-05 20:15\n";
        survey.add("position_m,CCT,Duv,Time\n1,2712,0.0012,2026-10-05 20:15\n", SurveyOnDisk.NOTHING_SAID);
        ImportResult again = survey.add("position_m;CCT;Duv;Time\n" + repeat + repeat + repeat, SurveyOnDisk.NOTHING_SAID);
        assertEquals("2 1", again.kept() + " " + again.alreadyThere(), "a clock without seconds does not tell repeats apart");
    }

    @Test
    void knowsTheReadingsInACopyOfTheLog() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT,Duv,Time\n2712,0.0012,2026-10-05 20:15:00\n2712,0.0012,2026-10-05 20:15:00\n", IN_ROW_ORDER);
        ImportResult copy = survey.add("copy.csv", Files.readAllBytes(survey.file("readings.csv")), SurveyOnDisk.NOTHING_SAID);
        assertEquals("0 2", copy.kept() + " " + copy.alreadyThere(), said(copy));
    }

    @Test
    void refusesTheLogItself() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, IN_ROW_ORDER);
        ImportResult result = survey.add(survey.file("readings.csv"), SurveyOnDisk.NOTHING_SAID);
        assertEquals("readings.csv: This is the log of this survey itself, so its readings are in it already. Choose the file that the "
                + "meter exported; nothing was imported.", said(result));
        assertEquals(List.of(2, false), List.of(survey.log().size(), Files.exists(survey.file("originals/readings.csv"))));
    }

    @Test
    void setsARowWithNegativeLuxAsideSoThatTheSurveyCanStillBeOpened() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("CCT,Duv,Lux\n2712,0.0012,-911\n2715,0.0011,310\n", IN_ROW_ORDER);
        assertEquals("walk.csv:2: Lux: -911 lx is below 0, and there is no such illuminance. Correct it, or leave lux empty.", said(result));
        assertEquals("310", survey.reading().lux().orElseThrow().text());
    }

    @Test
    void takesReadingsThatComeOutAlikeForTwo() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("CCT,Duv\n2712,0.0012\n2712,0.0012\n", IN_ROW_ORDER);
        survey.add("next.csv", "CCT,Duv\n2715,0.0012\n2713,0.0012\n2712,0.0012\n".getBytes(StandardCharsets.UTF_8), IN_ROW_ORDER);
        assertEquals(5, survey.log().size());
    }

    @Test
    void addsSixDecimetresWithoutABinaryRest() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, SurveyOnDisk.at(new Stations.Evenly(typed("0.1"), typed("0.2"))));
        assertEquals("0.3", survey.log().get(1).positionM().text());
    }

    @Test
    void walksBackToTheDatum() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK, SurveyOnDisk.at(new Stations.Evenly(typed("12.5"), typed("-0.5"))));
        assertEquals("12.0", survey.log().get(1).positionM().text());
    }

    @Test
    void takesPositionsFromAList() throws IOException {
        Path list = Files.writeString(temporary.resolve("places.txt"), "# lobby\nposition\n0.20\n4' 6\"\n\n2500 mm\n");
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add(WALK.replace("Over", "0.0010"), SurveyOnDisk.at(StationList.read(list).value().orElseThrow()));
        assertEquals(List.of("0.20", "1.372", "2.500"), survey.log().stream().map(reading -> reading.positionM().text()).toList());
    }

    @Test
    void saysWhichLinesOfAListAreNoPositions() throws IOException {
        Path list = Files.writeString(temporary.resolve("places.txt"), "0.20\nwindow\n");
        assertEquals(List.of("places.txt:2: \"window\" is no position. Write metres, or the unit with it: 3.5, 3500 mm, 12' 6 1/2\"."),
                said(StationList.read(list).problems()));
    }

    @Test
    void prefersThePositionsInTheFile() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("position_m,CCT,Duv\n7.25,2712,0.0012\n", IN_ROW_ORDER);
        assertEquals("7.25", survey.reading().positionM().text());
        assertEquals("walk.csv: The file has a column position_m; it gave the positions, and --start, --every or --positions did not count.",
                said(result));
    }

    @Test
    void saysThatPositionsWithoutAUnitWereTakenInMetres() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals("walk.csv: Pos: The column says no unit; it was taken in metres. If it is not, name it with --map Pos=position_mm or "
                + "position_ft.", said(survey.add("Pos,CCT,Duv\n7.25,2712,0.0012\n", SurveyOnDisk.NOTHING_SAID)));
    }

    @Test
    void takesAColumnForWhatTheUserSaysItIs() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        survey.add("Tone,Tint,At\n2712,0.0012,7250\n", SurveyOnDisk.naming(Map.of("Tone", "cct_k", "2", "duv", "At", "position_mm"), new Stations.Unsaid()));
        assertEquals("2712 0.0012 7.250", digits(survey.reading().colour().orElseThrow().cctDuv()) + " " + survey.reading().positionM().text());
    }

    @Test
    void asksAboutColumnsThatNobodyKnows() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        assertEquals(List.of("walk.csv: Flux: The column Flux was not recognised and nothing of it went to the log. If it is needed, "
                + "name it with --map Flux=field."), said(survey.add("CCT,Duv,Flux,CRI\n2712,0.0012,88,91\n", IN_ROW_ORDER).questions()));
    }

    @Test
    void learnsNamesFromTheSurveysOwnTable() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        Files.writeString(survey.file("meter-headers.csv"), "field,name,unit,source\ncct_k,Tone,K,own\nduv,Tint,,own\nhue,H,,own\n");
        ImportResult result = survey.add("Tone,Tint\n2712,0.0012\n", IN_ROW_ORDER);
        assertEquals(1, result.kept());
        assertEquals("meter-headers.csv:4: The row \"hue,H,,own\" names no field, no known unit or no name; write field,name,unit,source, "
                + "for example cct_k,My CCT,K,own. The row does not count.", said(result));
    }

    @Test
    void sortsRowsIntoTheCovesThatTheyName() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary, "C1", "C2");
        ImportResult result = survey.add("cove,position_m,CCT,Duv\nC2,1,2712,0.0012\nC9,1,2712,0.0012\n,1,2712,0.0012\n", SurveyOnDisk.NOTHING_SAID);
        assertEquals("C2", survey.reading().cove());
        assertEquals("walk.csv:3: cove: The survey has no cove \"C9\".\nwalk.csv:4: cove: The row names no cove. Say which one with --cove.",
                said(result));
    }

    @Test
    void asksForTheCoveWhereTheSurveyHasSeveral() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary, "C1", "C2");
        assertEquals("walk.csv: The survey has the coves C1, C2. Say which one was read with --cove; nothing was imported.",
                said(survey.add(WALK, IN_ROW_ORDER)));
        assertEquals("C2", survey.add(WALK, SurveyOnDisk.inCove("C2")).kept() == 2 ? survey.log().get(0).cove() : "");
    }

    @Test
    void warnsOnceOfPairsThatDisagreeHoweverManyRows() throws IOException {
        SurveyOnDisk survey = SurveyOnDisk.in(temporary);
        ImportResult result = survey.add("x,y,CCT,Duv\n0.4580,0.4102,2900,0.0030\n0.4580,0.4102,2900,0.0030\n", IN_ROW_ORDER);
        assertEquals(List.of(2, 2), List.of(result.kept(), result.warnings().size()), said(result));
        assertEquals("walk.csv:2: CCT: The same holds in 2 of 2 rows, of which this is the first.", said(result.warnings()).get(1));
        Reading first = survey.log().get(0);
        assertEquals("0.4580 0.4102 2900 0.0030", digits(first.colour().orElseThrow().xy()) + " " + digits(first.colour().orElseThrow().cctDuv()));
    }
}
