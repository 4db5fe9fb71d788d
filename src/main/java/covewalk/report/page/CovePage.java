package covewalk.report.page;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.StepPlane;
import covewalk.colour.UvPrime;
import covewalk.plot.Picture;
import covewalk.plot.Profile;
import covewalk.plot.Strip;
import covewalk.plot.Svg;
import covewalk.plot.UvDiagram;
import covewalk.plot.VerdictMark;
import covewalk.report.punch.PunchWords;
import covewalk.report.punch.WarningWords;
import covewalk.survey.Cove;
import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.evidence.ReferenceSpot;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.ClaimWords;
import covewalk.words.NoteWords;
import covewalk.words.Numbers;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The evidence of one cove as it is printed.
 *
 * @param number from 1, in the survey's order
 * @param pictures SVG over the full width, the strip first
 * @param diagram SVG of its colours; empty where nothing was read
 * @param claims a reel a row: name, claim, steps measured and their uncertainty, verdict
 * @param stretches rows of cells
 * @param stations rows of cells
 * @param spots what its reference spots say
 * @param weakens what weakens the evidence here
 */
record CovePage(int number, String title, List<String> pictures, String diagram, List<List<String>> claims, List<JointRow> joints,
                List<List<String>> stretches, List<List<String>> stations, List<String> spots, List<String> weakens) {

    /** A joint: its mark stands between the cells of what it is and those of what was measured. */
    record JointRow(String position, String also, String reels, String mark, String verdict, List<String> figures, String towards,
                    String toSettle, boolean beyond) {
    }

    /** Makes coves for a page. */
    static final class Maker {

        private static final String NONE = "–";
        private static final int LONGEST_REEL = 20;

        private final Words words;
        private final Numbers numbers;
        private final PunchWords punch;
        private final Judgement judgement;
        private final List<ReferenceSpot> spots;
        private final WarningWords warnings;
        private final Map<String, ReelClaim> claims = new HashMap<>();

        Maker(Words words, PunchWords punch, Judgement judgement, List<ReferenceSpot> spots, WarningWords warnings) {
            this.words = words;
            this.numbers = words.numbers();
            this.punch = punch;
            this.judgement = judgement;
            this.spots = spots;
            this.warnings = warnings;
            judgement.claims().forEach(claim -> claims.put(claim.reel().id(), claim));
        }

        /** Strip and joints only, for a list so long that nobody prints the rest. */
        CovePage brief(int number, CoveJudgement cove) {
            return new CovePage(number, title(cove.cove()), List.of(Svg.of(Strip.of(cove, words))), "", List.of(),
                    cove.joints().stream().map(this::joint).toList(), List.of(), List.of(), spots(cove), weakens(cove));
        }

        private String title(Cove cove) {
            return words.text("cove.title", punch.cove(cove), punch.lengths().first(cove.lengthM()), punch.datum(cove));
        }

        CovePage cove(int number, CoveJudgement cove) {
            StepPlane plane = judgement.planeOf(cove);
            Limits limits = judgement.survey().limits();
            List<Picture> pictures = new ArrayList<>();
            pictures.add(Strip.of(cove, words));
            Profile.of(cove, plane, words).ifPresent(pictures::add);
            return new CovePage(number, title(cove.cove()), pictures.stream().map(Svg::of).toList(), UvDiagram.of(cove, plane, limits, words).map(Svg::of).orElse(""),
                    claims(cove), cove.joints().stream().map(this::joint).toList(),
                    cove.stretches().stream().map(stretch -> stretch(stretch, plane)).toList(), new StationTable(words).rows(cove),
                    spots(cove), weakens(cove));
        }

        private List<List<String>> claims(CoveJudgement cove) {
            ClaimWords claimWords = new ClaimWords(words);
            return cove.cove().placements().stream().map(Placement::reel).distinct().filter(claims::containsKey).map(claims::get).map(claim -> claim(claim, claimWords)).toList();
        }

        private List<String> claim(ReelClaim claim, ClaimWords claimWords) {
            return List.of(claimWords.reel(claim), claimWords.claim(claim),
                    claim.measured().map(measured -> numbers.steps(measured.steps())).orElse(NONE),
                    claim.measured().map(measured -> numbers.steps(measured.standardUncertaintySteps())).orElse(NONE),
                    claimWords.verdict(claim));
        }

        private List<String> spots(CoveJudgement cove) {
            return spots.stream().filter(spot -> spot.spot().cove().equals(cove.cove().id()))
                    .map(new ReferenceSpotWords(words)::sentence).toList();
        }

        private JointRow joint(JudgedJoint joint) {
            boolean read = joint.verdict() != Verdict.NOT_READ;
            return new JointRow(punch.lengths().first(joint.positionM()), punch.lengths().second(joint.positionM()),
                    joint.reels().stream().map(reel -> Shortened.of(reel, LONGEST_REEL)).collect(Collectors.joining(" | ")),
                    Svg.of(VerdictMark.of(joint.verdict(), joint.difference()).picture(words)), words.verdict(joint.verdict()),
                    List.of(figure(joint, difference -> numbers.steps(difference.steps())),
                            figure(joint, difference -> numbers.steps(difference.standardUncertaintySteps())),
                            read ? numbers.confidence(joint.confidence().beyond()) : NONE,
                            read ? numbers.confidence(joint.confidence().within()) : NONE,
                            figure(joint, difference -> difference.luxRatio().isPresent()
                                    ? numbers.fixed(difference.luxRatio().getAsDouble(), 2) : NONE),
                            numbers.fixed(joint.rounds(), 0)),
                    figure(joint, difference -> words.towards(difference.towards())), words.toSettleInShort(joint.settle(), joint.verdict()),
                    joint.verdict() == Verdict.BEYOND);
        }

        private static String figure(JudgedJoint joint, Function<Difference, String> figure) {
            return joint.difference().map(figure).orElse(NONE);
        }

        private List<String> stretch(Stretch stretch, StepPlane plane) {
            UvPrime middle = stretch.line().at(stretch.middleM());
            ColourTemperature temperature = ColourTemperature.of(middle);
            boolean white = temperature instanceof CctDuv;
            double slope = plane.steps(stretch.line().uPerM(), stretch.line().vPerM());
            return List.of(words.text("cove.from-to", words.lengths().cell(stretch.fromM()), words.lengths().cell(stretch.toM())),
                    Shortened.of(stretch.placement().reel(), LONGEST_REEL), numbers.fixed(middle.u(), 4), numbers.fixed(middle.v(), 4),
                    white ? numbers.fixed(((CctDuv) temperature).cctK(), 0) : NONE,
                    white ? numbers.fixed(((CctDuv) temperature).duv(), 4) : NONE,
                    stretch.line().drifts() ? numbers.fixed(words.lengths().perUnit(slope), 2) : NONE,
                    numbers.fixed(stretch.stations().size(), 0));
        }

        private List<String> weakens(CoveJudgement cove) {
            Stream<String> ofJoints = new NoteWords(words).byPlace(cove.joints()).entrySet().stream()
                    .map(note -> words.text("cove.note", String.join(", ", note.getValue()), note.getKey()));
            return Stream.concat(ofJoints, warnings.ofCove(cove.cove().id()).stream()).toList();
        }
    }
}
