package covewalk.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import covewalk.report.punch.Sample;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CheckJsonTest {

    private final String written = new CheckJson().of(Sample.judgement());

    @Test
    void isAsKept() {
        Golden.assertSame("check.json", written);
    }

    @Test
    void keepsThePublishedFieldsFirstAndInTheirOrder() throws IOException {
        JsonNode cove = JsonMapper.builder().build().readTree(written).at("/coves/0");
        assertEquals(List.of("cove", "stations", "readings", "joints", "stretches", "faults"), names(cove).subList(0, 6));
        assertEquals(List.of("positionM", "reels", "steps", "standardUncertaintySteps", "deltaUPrime", "deltaVPrime", "deltaCctK",
                "deltaDuv", "confidenceBeyond", "confidenceWithin", "verdict", "readingsToSettle", "towards", "luxRatio", "rounds"),
                names(cove.at("/joints/0")).subList(0, 15));
        assertEquals(List.of("fromM", "toM", "uPrime", "vPrime", "slopeStepsPerM", "stations"),
                names(cove.at("/stretches/0")).subList(0, 6));
        assertEquals(List.of("kind", "positionM", "rangeM", "reels", "steps", "confidenceBeyond", "verdict", "hint"),
                names(cove.at("/faults/0")).subList(0, 8));
    }

    @Test
    void aJointThatWasNotReadHasNoFigures() throws IOException {
        JsonNode joint = JsonMapper.builder().build().readTree(written).at("/coves/1/joints/1");
        for (String figure : List.of("steps", "standardUncertaintySteps", "deltaUPrime", "deltaVPrime", "deltaCctK", "deltaDuv",
                "confidenceBeyond", "confidenceWithin", "readingsToSettle", "towards", "luxRatio")) {
            assertTrue(joint.get(figure).isNull(), figure);
        }
        assertEquals("not-read", joint.get("verdict").asText());
        assertEquals("not-read", joint.get("whyNot").asText());
    }

    @Test
    void hasNoExponents() {
        assertFalse(written.matches("(?s).*[0-9]E-?[0-9].*"));
        assertTrue(written.contains("\"confidenceWithin\" : 0.00006"), "small figures are written out");
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
