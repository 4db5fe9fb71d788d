package covewalk.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.CctDuv;
import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.report.punch.Sample;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UvDiagramTest {

    private final Judgement judgement = Sample.judgement();

    /** A black body at 2700 K has x 0.4599, y 0.4106 (from memory); by u' = 4x / (3 - 2x + 12y), v' = 9y / (3 - 2x + 12y) (CIE 15). */
    @Test
    void saysWhatItShowsInNumbers() {
        String says = diagram(0).says();
        assertTrue(says.contains("the target at u' 0.2625, v' 0.5274 with rings of 1, …, 3 steps"), says);
        assertTrue(says.contains("Reel R2: u' 0.2635, v' 0.5238."), says);
    }

    @Test
    void withoutATargetTheRingsAreAboutTheMean() {
        assertTrue(diagram(1).says().contains("rings of 1, …, 2 steps about the cove's mean"), diagram(1).says());
    }

    @Test
    void ofACoveNotReadThereIsNone() {
        CoveJudgement stair = judgement.coves().get(2);
        assertTrue(UvDiagram.of(stair, judgement.planeOf(stair), judgement.survey().limits(), Words.english()).isEmpty());
    }

    @Test
    void staysWithinItsPicture() {
        Picture picture = diagram(0);
        for (Shape shape : picture.shapes()) {
            if (shape instanceof Shape.Path path) {
                path.points().forEach(point -> assertTrue(point.x() >= 0 && point.x() <= picture.widthMm() && point.y() >= 0
                        && point.y() <= picture.heightMm(), point.toString()));
            }
        }
    }

    /** A ring is drawn next before the name of its reel, its cross between them. */
    @Test
    void noRingGoesThroughTheNameOfItsReel() {
        List<Shape> shapes = diagram(0).shapes();
        List<Shape.Text> names = shapes.stream().filter(Shape.Text.class::isInstance).map(Shape.Text.class::cast)
                .filter(text -> text.text().matches("R\\d+")).toList();
        assertTrue(names.size() > 1, names.toString());
        for (Shape.Text name : names) {
            Shape.Path ring = (Shape.Path) shapes.get(shapes.indexOf(name) - 3);
            boolean rightOfIt = ring.points().stream().allMatch(point -> point.x() < name.x());
            boolean leftOfIt = ring.points().stream().allMatch(point -> point.x() > name.x());
            assertTrue(name.anchor() == Shape.Anchor.START ? rightOfIt : leftOfIt, name.toString());
        }
    }

    @Test
    void bothAxesHaveOneScaleSoThatARingIsRound() {
        UvFrame frame = UvFrame.around(List.of(new UvPrime(0.26, 0.52), new UvPrime(0.27, 0.53)));
        assertEquals(frame.x(0.265) - frame.x(0.264), frame.y(0.524) - frame.y(0.525), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.00001, 0.001, 0.01, 0.05})
    void itsTicksAreRoundAndFew(double span) {
        UvFrame frame = UvFrame.around(List.of(new UvPrime(0.26, 0.52), new UvPrime(0.26 + span, 0.52 + span)));
        assertTrue(frame.ticksU().size() >= 2 && frame.ticksU().size() <= 9, frame.ticksU().toString());
        assertTrue(frame.ticksV().size() >= 2 && frame.ticksV().size() <= 9, frame.ticksV().toString());
    }

    @ParameterizedTest
    @CsvSource({"UV_CIRCLE, 3", "ELLIPSE, 3", "ELLIPSE, 1"})
    void everyPointOfARingIsSoManyStepsAway(StepRule rule, double steps) {
        StepPlane plane = StepPlane.of(rule, 2700);
        UvPrime centre = new CctDuv(2700, 0).toUvPrime();
        UvRings.steps(centre, plane, steps).forEach(point ->
                assertEquals(steps, plane.steps(point.u() - centre.u(), point.v() - centre.v()), 1e-9));
    }

    @Test
    void anUncertaintyReachesTwiceItsStandardOneAlongItsAxes() {
        UvPrime centre = new UvPrime(0.26, 0.52);
        List<UvPrime> ring = UvRings.uncertainty(centre, new Covariance(4e-8, 0, 1e-8));
        assertEquals(0.26 + 2 * 2e-4, ring.stream().mapToDouble(UvPrime::u).max().orElseThrow(), 1e-9);
        assertEquals(0.52 + 2 * 1e-4, ring.stream().mapToDouble(UvPrime::v).max().orElseThrow(), 1e-9);
    }

    private Picture diagram(int cove) {
        CoveJudgement judged = judgement.coves().get(cove);
        return UvDiagram.of(judged, judgement.planeOf(judged), judgement.survey().limits(), Words.english()).orElseThrow();
    }
}
