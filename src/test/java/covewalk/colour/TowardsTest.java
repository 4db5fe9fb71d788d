package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TowardsTest {

    @ParameterizedTest(name = "{4}")
    @CsvSource(textBlock = """
            # CCT,  Duv,    CCT,  Duv,    words
            2700,   0,      2700, 0,      same
            2700,   0,      2650, 0,      warmer
            2700,   0,      2750, 0,      cooler
            2700,   0,      2700, 0.002,  greener
            2700,   0,      2700, -0.002, pinker
            2700,   0.001,  2650, -0.001, 'warmer, pinker'
            4000,   0,      4100, 0.002,  'cooler, greener'
            6500,   -0.001, 6300, 0.002,  'warmer, greener'
            20000,  0,      19000, 0,     warmer
            1000,   0,      1010, 0,      cooler
            """)
    void saysWhichWayTheSecondColourLies(double cct1, double duv1, double cct2, double duv2, String words) {
        Towards towards = Towards.from(new CctDuv(cct1, duv1).toUvPrime(), new CctDuv(cct2, duv2).toUvPrime());
        assertEquals(words, towards.words());
        assertEquals(words, towards.toString());
    }

    @Test
    void givesAWordToAPartOfAQuarterOfTheWhole() {
        CctDuv middle = new CctDuv(3500, 0);
        Jacobian j = middle.jacobianToUvPrime();
        double length = Math.hypot(j.a(), j.c()); // u'v' per kelvin, along the locus
        double tu = -j.a() / length;
        double tv = -j.c() / length;
        for (double share : new double[] {0.24, 0.26}) {
            double along = 0.001 * Math.sqrt(1 - share * share);
            double across = 0.001 * share;
            UvPrime to = middle.toUvPrime().plus(along * tu - across * tv, along * tv + across * tu);
            assertEquals(share > 0.25 ? "warmer, greener" : "warmer", Towards.from(middle.toUvPrime(), to).words());
        }
    }

    @Test
    void turnsRoundWhenTheColoursAreExchanged() {
        SplittableRandom random = new SplittableRandom(10);
        for (int i = 0; i < 5000; i++) {
            UvPrime a = new UvPrime(random.nextDouble(0.15, 0.45), random.nextDouble(0.4, 0.54));
            UvPrime b = a.plus(random.nextDouble(-0.01, 0.01), random.nextDouble(-0.01, 0.01));
            Towards there = Towards.from(a, b);
            Towards back = Towards.from(b, a);
            assertEquals(there.along() == Towards.Along.SAME, back.along() == Towards.Along.SAME);
            assertEquals(there.across() == Towards.Across.SAME, back.across() == Towards.Across.SAME);
            assertEquals(there.along() == Towards.Along.WARMER, back.along() == Towards.Along.COOLER);
            assertEquals(there.across() == Towards.Across.GREENER, back.across() == Towards.Across.PINKER);
            assertNotEquals("same", there.words());
        }
    }
}
