package covewalk.survey.file.meter;

import static covewalk.survey.file.meter.SurveyOnDisk.IN_ROW_ORDER;
import static covewalk.survey.file.meter.SurveyOnDisk.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.Xy;
import covewalk.survey.Reading;
import covewalk.survey.TypedColour;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Seven household lamps measured by others, with pairs that disagree; the file's first line says where they are from. */
class MeasuredLampsTest {

    @TempDir
    Path temporary;

    private SurveyOnDisk survey;
    private ImportResult result;

    @BeforeEach
    void importOneReadingEachHalfMetre() throws IOException, URISyntaxException {
        survey = SurveyOnDisk.in(temporary);
        Path file = Path.of(MeasuredLampsTest.class.getResource("measured-led-lamps.csv").toURI());
        result = survey.add(file, IN_ROW_ORDER);
    }

    @Test
    void keepsEveryLamp() throws IOException {
        assertEquals("7 = 7 + 0", result.rows() + " = " + result.kept() + " + " + result.setAside().size());
        assertEquals(List.of("0.0", "0.5", "1.0", "1.5", "2.0", "2.5", "3.0"),
                survey.log().stream().map(reading -> reading.positionM().text()).toList());
        assertEquals("from measured-led-lamps.csv line 8; L12", survey.log().get(5).note());
    }

    /** The file's CCT is rounded to 0.04 K or so against its x, y. */
    @Test
    void agreesWithTheFilesCct() throws IOException {
        for (Reading reading : survey.log()) {
            TypedColour typed = reading.colour().orElseThrow();
            CctDuv ours = assertInstanceOf(CctDuv.class, ColourTemperature.of(
                    new Xy(typed.xy().orElseThrow().first().value(), typed.xy().orElseThrow().second().value())));
            assertEquals(typed.cctDuv().orElseThrow().first().value(), ours.cctK(), 0.05, reading.note());
        }
    }

    @Test
    void warnsThatItsDuvDoesNotBelongToItsXAndY() {
        assertTrue(said(result).contains("measured-led-lamps.csv:3: cct_k: CCT, Duv differ by "), said(result));
        assertTrue(said(result).contains("measured-led-lamps.csv:3: cct_k: The same holds in 7 of 7 rows"), said(result));
    }
}
