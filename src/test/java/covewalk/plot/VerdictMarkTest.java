package covewalk.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.plot.Paint.Ink;
import covewalk.report.punch.Sample;
import covewalk.verdict.Difference;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Words;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The shapes are those by which marks are told apart without colour. */
class VerdictMarkTest {

    private static final Difference WARMER = Sample.judgement().coves().get(0).joints().get(0).difference().orElseThrow();
    private static final Difference COOLER = Sample.judgement().coves().get(0).joints().get(1).difference().orElseThrow();

    @Test
    void withinIsOneLevelBar() {
        List<Shape.Rectangle> bars = bars(Verdict.WITHIN, WARMER);
        assertEquals(1, bars.size());
        assertEquals(10, bars.get(0).width(), 1e-9);
    }

    @Test
    void beyondStepsDownOneBarTowardsWarmer() {
        List<Shape.Rectangle> bars = bars(Verdict.BEYOND, WARMER);
        assertEquals(bars.get(0).y() + bars.get(0).height(), bars.get(1).y(), 1e-9); // touching, one bar lower
        assertEquals(bars.get(0).x() + bars.get(0).width(), bars.get(1).x(), 1e-9);
    }

    @Test
    void beyondStepsUpOneBarTowardsCooler() {
        List<Shape.Rectangle> bars = bars(Verdict.BEYOND, COOLER);
        assertEquals(bars.get(0).y() - bars.get(0).height(), bars.get(1).y(), 1e-9);
    }

    @Test
    void unsettledIsOpenWithDotsInTheGap() {
        List<Shape.Rectangle> bars = bars(Verdict.UNSETTLED, WARMER);
        assertEquals(4, bars.size());
        double gap = bars.get(1).x() - (bars.get(0).x() + bars.get(0).width());
        assertTrue(gap > 3, "gap of " + gap);
        assertTrue(bars.subList(2, 4).stream().allMatch(dot -> dot.width() < 1 && dot.x() > bars.get(0).x() + bars.get(0).width()
                && dot.x() + dot.width() < bars.get(1).x()));
    }

    @Test
    void notReadIsOutlines() {
        assertTrue(bars(Verdict.NOT_READ, WARMER).stream().allMatch(bar -> bar.fill() == Ink.NONE && bar.outline() != Ink.NONE));
    }

    @Test
    void onlyBeyondHasFullContrast() {
        for (Verdict verdict : Verdict.values()) {
            assertEquals(verdict == Verdict.BEYOND, bars(verdict, WARMER).get(0).fill() == Ink.STRONG, verdict.code());
        }
    }

    @Test
    void saysItsWord() {
        assertEquals("not read", VerdictMark.of(Verdict.NOT_READ, Optional.empty()).picture(Words.english()).says());
    }

    private static List<Shape.Rectangle> bars(Verdict verdict, Difference difference) {
        return VerdictMark.of(verdict, Optional.of(difference)).shapes(0, 0, 10, 2, "").stream()
                .map(Shape.Rectangle.class::cast).toList();
    }
}
