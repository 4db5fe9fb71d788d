package covewalk.verdict.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DiscProbabilityTest {

    @ParameterizedTest(name = "mean {0}, {1}, sd {2}, {3}, radius {4}")
    @CsvFileSource(resources = "disc-probabilities.csv", useHeadersInDisplayName = true)
    void agreesWithAnIndependentLibrary(double mean1, double mean2, double sd1, double sd2, double radius,
                                        double probability) {
        assertEquals(probability, DiscProbability.of(mean1, mean2, sd1, sd2, radius), 1e-9);
    }

    @ParameterizedTest(name = "{0} sd")
    @CsvSource(textBlock = """
        # sd, share of a circular bivariate normal inside (1 - exp(-n^2/2); printed as 39, 86 and 99 % of colour matches
        # inside the 1, 2 and 3 step ellipse in the encyclopedia's text on MacAdam 1942)
        1, 0.39346934
        2, 0.86466472
        3, 0.98889100
        """)
    void holdsTheSharesOfAMacAdamEllipseAboutItsCentre(double sds, double share) {
        assertEquals(share, DiscProbability.of(0, 0, 1, 1, sds), 1e-8);
    }

    @Test
    void isNothingFarOutsideAndEverythingFarInside() {
        assertEquals(0, DiscProbability.of(50, 0, 1, 0.5, 2));
        assertEquals(1, DiscProbability.of(2, 0, 0.1, 0.1, 50));
        assertEquals(0, DiscProbability.of(1, 0, 0.5, 0.5, 0));
    }
}
