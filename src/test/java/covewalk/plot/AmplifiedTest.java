package covewalk.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.CctDuv;
import covewalk.colour.UvPrime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmplifiedTest {

    private static final UvPrime MEAN = new CctDuv(3000, 0).toUvPrime();

    @Test
    void showsTheMeanAsNeutralGrey() {
        Paint.Rgb mean = new Amplified(MEAN, 0.002).paint(MEAN);
        assertEquals(mean.red(), mean.green(), 1);
        assertEquals(mean.green(), mean.blue(), 1);
    }

    @Test
    void showsWarmerAsYellowishAndCoolerAsBluish() {
        Amplified amplified = new Amplified(MEAN, 0.004);
        Paint.Rgb warmer = amplified.paint(new CctDuv(2900, 0).toUvPrime());
        Paint.Rgb cooler = amplified.paint(new CctDuv(3100, 0).toUvPrime());
        assertTrue(warmer.red() > warmer.blue(), warmer.toString());
        assertTrue(cooler.blue() > cooler.red(), cooler.toString());
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(textBlock = """
        # farthest, times, why
        0.0022,     12,    two steps off: 12 times is 0.026 and the next, 15, is over 0.03
        0.0001,     40,    never more than 40 times, or noise looks like colour
        0.02,       1,     eighteen steps off need no help
        0.5,        1,     and never fewer than once
        """)
    void enlargesAsMuchAsTheBandCanShow(double farthest, int times, String why) {
        assertEquals(times, new Amplified(MEAN, farthest).times(), why);
    }

    @Test
    void ticksStandAtRoundPositionsFarEnoughApart() {
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0), labels(new Scale(30, 5, 100), false));
        assertEquals(List.of(0.0, 20.0, 40.0, 60.0, 80.0), labels(new Scale(30, 5, 100), true), "30 m are 98.4 ft");
        assertEquals(List.of(4.5, 5.0, 5.5), labels(new Scale(4.2, 5.8, 5, 50), false), "a piece of a cove keeps to round positions");
        assertEquals(new Scale(30, 5, 100).right(), new Scale(30, 5, 100).x(31), "what lies past the end is drawn at the end");
    }

    private static List<Double> labels(Scale scale, boolean feet) {
        return scale.ticks(feet).stream().map(Scale.Tick::label).toList();
    }
}
