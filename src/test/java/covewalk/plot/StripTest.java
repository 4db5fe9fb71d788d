package covewalk.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.punch.Sample;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import covewalk.words.LengthUnit;
import covewalk.words.Words;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StripTest {

    private final Judgement judgement = Sample.judgement();

    @Test
    void namesTheDatumAndHowMuchDifferencesAreEnlarged() {
        List<String> texts = texts(strip(0));
        assertTrue(texts.contains("0 = west end, by the door"), texts.toString());
        assertTrue(texts.stream().anyMatch(text -> text.matches("colour band: differences shown \\d+ times larger")), texts.toString());
    }

    @Test
    void saysEveryPlacementAndJointInWords() {
        List<String> says = strip(0).shapes().stream().map(Shape::says).filter(text -> !text.isEmpty()).toList();
        assertEquals(List.of("R1, 0.00 m to 5.00 m", "R2, 5.00 m to 10.00 m", "R3, 10.00 m to 15.00 m",
                "Joint at 5.00 m, R1 to R2: beyond", "Joint at 10.00 m, R2 to R3: unsettled", "change within a reel: beyond"), says);
    }

    @Test
    void givesStepsOfWhatAsksForActionAlone() {
        assertTrue(texts(strip(0)).containsAll(List.of("3.4", "1.9")));
        assertFalse(texts(strip(1)).contains("0.5"), "within needs no figure");
    }

    @Test
    void whereLabelsWouldCollideWhatIsBeyondKeepsItsOwn() {
        CoveJudgement cove = judgement.coves().get(0);
        Fault inside = cove.faults().get(2);
        Fault near = new Fault(FaultKind.DRIFT, 12.4, 12, 12.6, inside.placements(), inside.difference(), 2, inside.confidence(),
                Verdict.UNSETTLED, inside.hint(), inside.settle(), inside.budget(), List.of());
        List<String> texts = texts(Strip.of(new CoveJudgement(cove.cove(), cove.stations(), cove.stretches(), cove.joints(),
                List.of(near, inside)), Words.english()));
        assertTrue(texts.contains("change within a reel 4.2"), texts.toString());
        assertFalse(texts.contains("drift along a reel 4.2"), texts.toString());
    }

    @Test
    void repeatsTheLastJointOfAClosedCoveAtItsDatum() {
        assertEquals(2, strip(1).shapes().stream().filter(shape -> shape.says().equals("Joint at 10.00 m, R5 to R4: not read")).count());
    }

    @Test
    void drawsTallerTicksWhereAStationWasReadAgain() {
        CoveJudgement cove = judgement.coves().get(0);
        long again = cove.stations().stream().filter(station -> station.readings().size() > 1).count();
        long tall = lines(strip(0)).filter(line -> line.y1() == 27 && line.y2() == 30).count();
        long low = lines(strip(0)).filter(line -> line.y1() == 27 && line.y2() == 28.5).count();
        assertEquals(again, tall);
        assertEquals(cove.stations().size() - again, low);
    }

    @Test
    void drawsACoveWithoutReadings() {
        assertTrue(texts(strip(2)).contains("R1"));
        assertTrue(Profile.of(judgement.coves().get(2), judgement.planeOf(judgement.coves().get(2)), Words.english()).isEmpty());
    }

    @Test
    void cutsLongTextsAndKeepsAllInsideThePicture() {
        Picture strip = Strip.of(Sample.named("wide ".repeat(2000)).coves().get(0), Words.english());
        assertTrue(texts(strip).stream().allMatch(text -> text.length() <= 90));
        assertTrue(strip.says().length() < 300);
    }

    @Test
    void showsAnOffsetInTheLaneItBelongsTo() {
        CoveJudgement cove = judgement.coves().get(0);
        Picture profile = Profile.of(cove, judgement.planeOf(cove), Words.english()).orElseThrow();
        List<Shape.Line> accents = profile.shapes().stream().filter(Shape.Line.class::isInstance).map(Shape.Line.class::cast)
                .filter(line -> line.paint() == Paint.Ink.ACCENT).toList();
        assertEquals(8, accents.size()); // four stretches in two lanes
        assertTrue(accents.get(3).y1() < accents.get(2).y1(), "the last stretch is 87 K cooler, and cooler is up");
        assertTrue(accents.get(4).y1() < accents.get(5).y1(), "the first is greener than the second, and greener is up");
    }

    @Test
    void aNarrowScreenGetsANarrowerPictureWithTextsOfTheSameSize() {
        CoveJudgement cove = judgement.coves().get(0);
        Picture narrow = Strip.of(cove, Words.english(), StripFrame.screen(cove.cove(), 110, true));
        assertEquals(110, narrow.widthMm());
        assertTrue(narrow.heightMm() < 35, "a fifth of a tablet's screen");
        assertEquals(2.6, narrow.shapes().stream().filter(Shape.Text.class::isInstance).mapToDouble(shape -> ((Shape.Text) shape).size())
                .min().orElseThrow());
    }

    @Test
    void onAScreenNoLabelOfAFaultSticksOut() {
        CoveJudgement cove = judgement.coves().get(0);
        Picture narrow = Strip.of(cove, Words.english(), StripFrame.screen(cove.cove(), 50, true));
        Shape.Text label = narrow.shapes().stream().filter(Shape.Text.class::isInstance).map(Shape.Text.class::cast)
                .filter(text -> text.text().startsWith("change within a reel")).findFirst().orElseThrow();
        double half = label.text().length() * 0.7;
        assertTrue(label.x() - half >= 0 && label.x() + half <= 50, label.toString());
    }

    @Test
    void halfAsHighItStillShowsEveryReelJointAndFault() {
        CoveJudgement cove = judgement.coves().get(0);
        StripFrame frame = StripFrame.screen(cove.cove(), 110, true);
        Picture lowest = Strip.lowest(cove, Words.english(), frame);
        assertTrue(lowest.heightMm() < 0.55 * Strip.of(cove, Words.english(), frame).heightMm(), lowest.heightMm() + " mm");
        assertEquals(List.of("R1, 0.00 m to 5.00 m", "R2, 5.00 m to 10.00 m", "R3, 10.00 m to 15.00 m",
                "Joint at 5.00 m, R1 to R2: beyond", "Joint at 10.00 m, R2 to R3: unsettled", "change within a reel: beyond"),
                lowest.shapes().stream().map(Shape::says).filter(text -> !text.isEmpty()).toList());
        assertEquals(List.of("R1", "R2", "R3"), texts(lowest), "no figures: they would lie on each other");
    }

    @Test
    void aPieceShowsOnlyWhatLiesInIt() {
        CoveJudgement cove = judgement.coves().get(0);
        Picture piece = Strip.of(cove, Words.english(), StripFrame.screen(cove.cove(), 110, true).around(5, 1.5));
        assertEquals(List.of("R1, 0.00 m to 5.00 m", "R2, 5.00 m to 10.00 m", "Joint at 5.00 m, R1 to R2: beyond"),
                piece.shapes().stream().map(Shape::says).filter(text -> !text.isEmpty()).toList());
    }

    @Test
    void positionsAndPlacesInThePictureAreOneAndTheSame() {
        StripFrame frame = StripFrame.screen(judgement.coves().get(0).cove(), 150, true).around(8, 2);
        for (double at : new double[] {6, 7.25, 10}) {
            assertEquals(at, frame.positionM(frame.xMm(at)), 1e-9);
        }
        assertEquals(6, frame.positionM(0), "left of the strip lies its beginning");
    }

    @Test
    void showsDifferencesAsManyTimesLargerAsAsked() {
        CoveJudgement cove = judgement.coves().get(0);
        StripFrame page = StripFrame.page(cove.cove());
        assertTrue(texts(Strip.of(cove, Words.english(), page.amplified(2))).contains("colour band: differences shown 2 times larger"));
        assertEquals(Strip.of(cove, Words.english(), page), Strip.of(cove, Words.english(), page.amplified(Strip.timesLarger(cove))));
    }

    @Test
    void givesPositionsInFeetWhereAsked() {
        CoveJudgement cove = judgement.coves().get(0);
        assertTrue(texts(Strip.of(cove, Words.english().lengthsIn(LengthUnit.FT), StripFrame.page(cove.cove()))).contains("10 ft"));
    }

    private Picture strip(int cove) {
        return Strip.of(judgement.coves().get(cove), Words.english());
    }

    private static List<String> texts(Picture picture) {
        return picture.shapes().stream().filter(Shape.Text.class::isInstance).map(shape -> ((Shape.Text) shape).text()).toList();
    }

    private static Stream<Shape.Line> lines(Picture picture) {
        return picture.shapes().stream().filter(Shape.Line.class::isInstance).map(Shape.Line.class::cast);
    }
}
