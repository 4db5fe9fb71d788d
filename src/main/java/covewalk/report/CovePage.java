package covewalk.report;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.StepPlane;
import covewalk.colour.UvPrime;
import covewalk.plot.Picture;
import covewalk.plot.Profile;
import covewalk.plot.Strip;
import covewalk.plot.Svg;
import covewalk.plot.VerdictMark;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.NoteWords;
import covewalk.words.Numbers;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The evidence of one cove as it is printed.
 *
 * @param pictures SVG, the strip first
 * @param joints rows of cells
 * @param stretches rows of cells
 */
record CovePage(String title, String stepsBy, List<String> pictures, List<JointRow> joints, List<List<String>> stretches,
                List<String> notes) {

    /** A joint: its mark stands between the cells of what it is and those of what was measured. */
    record JointRow(String position, String feet, String reels, String mark, String verdict, List<String> figures, String towards,
                    String toSettle) {
    }

    /** Makes coves for a page. */
    static final class Maker {

        private static final String NONE = "–";
        private static final int LONGEST_REEL = 20;

        private final Words words;
        private final Numbers numbers;
        private final PunchWords punch;

        Maker(Words words) {
            this.words = words;
            this.numbers = words.numbers();
            this.punch = new PunchWords(words);
        }

        CovePage cove(Judgement judgement, CoveJudgement cove) {
            StepPlane plane = judgement.planeOf(cove);
            List<Picture> pictures = new ArrayList<>();
            pictures.add(Strip.of(cove, words));
            Profile.of(cove, plane, words).ifPresent(pictures::add);
            return new CovePage(
                    words.text("cove.title", punch.cove(cove.cove()), numbers.metres(cove.cove().lengthM()), punch.datum(cove.cove())),
                    plane.name(), pictures.stream().map(Svg::of).toList(), cove.joints().stream().map(this::joint).toList(),
                    cove.stretches().stream().map(stretch -> stretch(stretch, plane)).toList(), notes(cove));
        }

        private JointRow joint(JudgedJoint joint) {
            boolean read = joint.verdict() != Verdict.NOT_READ;
            return new JointRow(numbers.metres(joint.positionM()), numbers.feetInches(joint.positionM()),
                    String.join(" | ", joint.reels().stream().map(reel -> Shortened.of(reel, LONGEST_REEL)).toList()), Svg.of(VerdictMark.of(joint.verdict(), joint.difference()).picture(words)),
                    words.verdict(joint.verdict()),
                    List.of(figure(joint, difference -> numbers.steps(difference.steps())),
                            figure(joint, difference -> numbers.steps(difference.standardUncertaintySteps())),
                            read ? numbers.confidence(joint.confidence().beyond()) : NONE,
                            read ? numbers.confidence(joint.confidence().within()) : NONE,
                            figure(joint, difference -> difference.luxRatio().isPresent()
                                    ? numbers.fixed(difference.luxRatio().getAsDouble(), 2) : NONE),
                            numbers.fixed(joint.rounds(), 0)),
                    figure(joint, difference -> words.towards(difference.towards())), words.toSettleInShort(joint.settle(), joint.verdict()));
        }

        private static String figure(JudgedJoint joint, Function<Difference, String> figure) {
            return joint.difference().map(figure).orElse(NONE);
        }

        private List<String> stretch(Stretch stretch, StepPlane plane) {
            UvPrime middle = stretch.line().at(stretch.middleM());
            ColourTemperature temperature = ColourTemperature.of(middle);
            boolean white = temperature instanceof CctDuv;
            double slope = plane.steps(stretch.line().uPerM(), stretch.line().vPerM());
            return List.of(numbers.fixed(stretch.fromM(), 2), numbers.fixed(stretch.toM(), 2), Shortened.of(stretch.placement().reel(), LONGEST_REEL),
                    numbers.fixed(middle.u(), 4), numbers.fixed(middle.v(), 4),
                    white ? numbers.fixed(((CctDuv) temperature).cctK(), 0) : NONE,
                    white ? numbers.fixed(((CctDuv) temperature).duv(), 4) : NONE,
                    stretch.line().drifts() ? numbers.fixed(slope, 2) : NONE,
                    numbers.fixed(stretch.stations().size(), 0), numbers.fixed(stretch.stations().stream()
                            .mapToInt(station -> station.readings().size()).sum(), 0));
        }

        private List<String> notes(CoveJudgement cove) {
            return new NoteWords(words).byPlace(cove.joints()).entrySet().stream()
                    .map(note -> words.text("cove.note", String.join(", ", note.getValue()), note.getKey())).toList();
        }
    }
}
