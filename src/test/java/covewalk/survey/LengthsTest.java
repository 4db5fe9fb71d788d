package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthsTest {

    /** A foot is 0.3048 m, an inch 0.0254 m exactly (international yard and pound agreement, 1959). */
    @ParameterizedTest(name = "{0} is {1} m")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        3.2              | 3.2
        3,2              | 3.2
        3.20 m           | 3.20
        0                | 0
        .5               | 0.5
        3200 mm          | 3.200
        3200mm           | 3.200
        320 cm           | 3.20
        12.5 metres      | 12.5
        1 ft             | 0.3048
        12 ft            | 3.6576
        12'              | 3.6576
        12' 6 1/2"       | 3.8227
        12ft6in          | 3.81
        12 ft 6.5 in     | 3.8227
        12'-6 1/2"       | 3.8227
        12′ 6 1/2″       | 3.8227
        12’ 6½           | none
        12' 6            | 3.81
        12' 6-1/2"       | 3.8227
        12' 1/2"         | 3.6703
        6 in             | 0.1524
        6 1/2"           | 0.1651
        1/3 in           | 0.008467
        16 ft 4.850394 in | 5
        100 ft           | 30.48
        """)
    void readsLengthsAsWritten(String written, String metres) {
        assertEquals(metres, Lengths.metres(written).map(Typed::text).orElse("none"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "m", "-3", "3.2.1", "3,200.5", "1e3", "12' 14\"", "12' 1/0\"", "3 yd", "three", "3 m 20",
        "99999999999999999999999999999999999999999"})
    void readsNoLengthWhereThereIsNone(String written) {
        assertTrue(Lengths.metres(written).isEmpty(), () -> written + " was read as " + Lengths.metres(written));
    }

    @ParameterizedTest
    @CsvSource({"5 m, 16.404199"}) // 5 / 0.3048, computed
    void agreesWithTheLengthOfAReelInFeet(String reel, double feet) {
        assertEquals(feet, Lengths.metres(reel).orElseThrow().value() / Lengths.metres("1 ft").orElseThrow().value(), 1e-6);
    }
}
