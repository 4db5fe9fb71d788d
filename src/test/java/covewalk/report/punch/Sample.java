package covewalk.report.punch;

import covewalk.colour.CctDuv;
import covewalk.colour.Covariance;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Joint;
import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.survey.Purpose;
import covewalk.survey.Reading;
import covewalk.survey.Reads;
import covewalk.survey.Reel;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
import covewalk.survey.StatedColour;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.Visit;
import covewalk.verdict.Budget;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import covewalk.verdict.claim.ClaimCentre;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.claim.WhyOpen;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Line;
import covewalk.verdict.stretch.Noise;
import covewalk.verdict.stretch.Parts;
import covewalk.verdict.stretch.Repeatability;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A judgement made by hand, with every verdict in it, so that what is written about it does not change with the sums.
 * Site, people, products and lots are invented.
 */
public final class Sample {

    private static final UvPrime BASE = new CctDuv(2725, 0).toUvPrime();
    private static final double STEP = UvPrime.STEP;
    private static final Parts SMALL = new Parts(Covariance.isotropic(0.00015), Covariance.ZERO, Covariance.ZERO, Covariance.ZERO);

    private final String name;
    private final String setBy;

    private Sample(String name, String setBy) {
        this.name = name;
        this.setBy = setBy;
    }

    /** Three coves: beyond, unsettled, within, not read, and nothing read at all. */
    public static Judgement judgement() {
        return new Sample("Quay House", "specification 26 51 00, 2.3").made();
    }

    /** The same with {@code text} wherever a user can type a text. */
    public static Judgement named(String text) {
        return new Sample(text, text).made();
    }

    private Judgement made() {
        List<Cove> coves = List.of(lobby(), bar(), stair());
        Survey survey = new Survey(new Site(name, text("4 Mole Lane")),
                new Visit(Optional.of(LocalDate.of(2026, 10, 5)), text("A. Inspector"), Optional.of(Purpose.COMMISSIONING),
                        OptionalInt.of(45), ""),
                List.of(new SetUp("A", text("hand meter"), text("M-1107"), Optional.of(LocalDate.of(2027, 3, 1)), 0.0003, 0.0015,
                        0.0005, Reads.STRIP, 0.05, 100, Set.of())),
                new Limits(2, OptionalDouble.of(3), setBy, StepRule.UV_CIRCLE, 0.05, Limits.ErrorPer.JOINT),
                List.of(reel("R1", "B3", "4471", "0012"), reel("R2", "B4", "4502", "0377"), reel("R3", "B3", "4471", ""),
                        reel("R4", "", "", ""), reel("R5", "B3", "4471", "0015")),
                coves, Optional.empty());
        return new Judgement(survey, List.of(judgedLobby(coves.get(0)), judgedBar(coves.get(1)),
                new CoveJudgement(coves.get(2), List.of(), List.of(), List.of(), List.of())),
                List.of(new Note(Note.Kind.COARSE_DIGITS, List.of("0.4133"))), claims(survey));
    }

    /** One claim of each kind; no reel was read that well or that badly in truth. */
    private static List<ReelClaim> claims(Survey survey) {
        List<Reel> reels = survey.reels();
        return List.of(
                claim(reels.get(0), 0.4, 0.9, new Confidence(0.001, 0.982), ClaimVerdict.SHOWN, WhyOpen.NONE, ClaimVerdict.SHOWN),
                claim(reels.get(1), 6.2, 1.4, new Confidence(0.988, 0.001), ClaimVerdict.NOT_SHOWN, WhyOpen.NONE, ClaimVerdict.NOT_SHOWN),
                claim(reels.get(2), 2.1, 1.4, new Confidence(0.21, 0.67), ClaimVerdict.UNSETTLED, WhyOpen.METER_ERROR, ClaimVerdict.SHOWN),
                new ReelClaim(reels.get(3), ClaimCentre.of(reels.get(3)), Optional.empty(), Confidence.NONE, ClaimVerdict.NOT_READ,
                        WhyOpen.NOT_READ, ClaimVerdict.NOT_READ),
                claim(reels.get(4), 2.9, 0.4, new Confidence(0.41, 0.58), ClaimVerdict.UNSETTLED, WhyOpen.NEAR_THE_EDGE,
                        ClaimVerdict.UNSETTLED));
    }

    private static ReelClaim claim(Reel reel, double steps, double uncertainty, Confidence confidence, ClaimVerdict verdict,
                                   WhyOpen why, ClaimVerdict inQuadrangle) {
        return new ReelClaim(reel, ClaimCentre.of(reel), Optional.of(new ReelClaim.Measured("A", BASE, steps, uncertainty, false)),
                confidence, verdict, why, inQuadrangle);
    }

    /** A text of the sample, or the text that takes the place of all of them. */
    private String text(String usual) {
        return name.equals("Quay House") ? usual : name;
    }

    private Reel reel(String id, String bin, String lot, String serial) {
        return new Reel(id, text("Example Strip Works"), text("Line 24"), "", OptionalInt.of(2700), bin.isEmpty() ? bin : text(bin),
                lot, serial.isEmpty() ? serial : text(serial), "2026-07", "", OptionalDouble.of(5), OptionalDouble.of(3), Optional.empty());
    }

    private Cove lobby() {
        return new Cove("C1", text("Lobby, north side"), 15, false, text("west end, by the door"), OptionalDouble.of(3.2), "",
                Optional.of(new StatedColour.ByCctDuv(new CctDuv(2700, 0))),
                List.of(new Feed(0, text("D1"), text("L3/12")), new Feed(15, "D2", "L3/14")),
                List.of(placement("R1", 0, 5), placement("R2", 5, 10), placement("R3", 10, 15)));
    }

    private Cove bar() {
        return new Cove("C2", text("Bar, round the column"), 10, true, "", OptionalDouble.empty(), "", Optional.empty(), List.of(),
                List.of(placement("R4", 0, 5), placement("R5", 5, 10)));
    }

    private Cove stair() {
        return new Cove("C3", text("Stair"), 5, false, text("lower end"), OptionalDouble.of(1.8), "", Optional.empty(), List.of(),
                List.of(placement("R1", 0, 5)));
    }

    private static Placement placement(String reel, double fromM, double toM) {
        return new Placement(reel, fromM, toM, Placement.KnownFrom.SEEN, "2026-09");
    }

    private CoveJudgement judgedLobby(Cove cove) {
        List<Stretch> stretches = List.of(stretch(cove, 0, 0, 5, 0, 0, 0), stretch(cove, 1, 5, 10, 0.0021, -0.0031, 0),
                stretch(cove, 2, 10, 12.75, 0.0005, -0.0018, 0), stretch(cove, 2, 12.75, 15, -0.0030, -0.0042, 0.0003));
        Difference first = difference(stretches.get(0), stretches.get(1), 3.4039, 0.2214, -31, -0.0026, OptionalDouble.of(0.97));
        Difference second = difference(stretches.get(1), stretches.get(2), 1.8776, 0.3015, 24, 0.0011, OptionalDouble.of(1.02));
        Difference inside = difference(stretches.get(2), stretches.get(3), 4.2472, 0.2950, 96, -0.0004, OptionalDouble.empty());
        List<Note> declared = List.of(new Note(Note.Kind.RESTS_ON_DECLARED, List.of()));
        List<Joint> joints = cove.joints();
        Settle six = new Settle(OptionalInt.of(6), Settle.WhyNot.NONE);
        return new CoveJudgement(cove, stations(stretches), stretches,
                List.of(new JudgedJoint(joints.get(0), "A", Optional.of(first), new Confidence(0.99994, 0.00006), Verdict.BEYOND,
                        Settle.SETTLED, 1, Budget.NONE, List.of()),
                        new JudgedJoint(joints.get(1), "A", Optional.of(second), new Confidence(0.312, 0.688), Verdict.UNSETTLED,
                                six, 2, Budget.NONE, declared)),
                List.of(new Fault(FaultKind.JOINT, 5, 5, 5, cove.placements().subList(0, 2), first, 2,
                        new Confidence(0.99994, 0.00006), Verdict.BEYOND, Hint.DIFFERENT_LOT_OR_BIN, Settle.SETTLED, Budget.NONE, List.of()),
                        new Fault(FaultKind.JOINT, 10, 10, 10, cove.placements().subList(1, 3), second, 2,
                                new Confidence(0.312, 0.688), Verdict.UNSETTLED, Hint.DIFFERENT_LOT_OR_BIN, six, Budget.NONE, declared),
                        new Fault(FaultKind.MID_REEL, 12.75, 12.5, 13, cove.placements().subList(2, 3), inside, 2,
                                new Confidence(0.998, 0.002), Verdict.BEYOND, Hint.SPLICE_OR_SURFACE, Settle.SETTLED, Budget.NONE, List.of())));
    }

    private CoveJudgement judgedBar(Cove cove) {
        List<Stretch> stretches = List.of(stretch(cove, 0, 0, 5, 0, 0, 0), stretch(cove, 1, 5, 10, 0.0005, 0.0002, 0));
        Difference inside = difference(stretches.get(0), stretches.get(1), 0.4896, 0.2500, -12, 0.0001, OptionalDouble.of(1));
        Difference off = difference(stretches.get(0), stretches.get(1), 3.1, 1.4, -70, 0.0011, OptionalDouble.empty());
        List<Joint> joints = cove.joints();
        return new CoveJudgement(cove, stations(stretches), stretches,
                List.of(new JudgedJoint(joints.get(0), "A", Optional.of(inside), new Confidence(0.0000004, 0.9999996), Verdict.WITHIN,
                        Settle.SETTLED, 1, Budget.NONE, List.of(new Note(Note.Kind.UNLIKE_REELS, List.of()))),
                        new JudgedJoint(joints.get(1), "", Optional.empty(), Confidence.NONE, Verdict.NOT_READ,
                                new Settle(OptionalInt.empty(), Settle.WhyNot.NOT_READ), 0, Budget.NONE, List.of())),
                List.of(new Fault(FaultKind.OFF_TARGET, 7.5, 5, 10, cove.placements().subList(1, 2), off, 3,
                        new Confidence(0.53, 0.47), Verdict.UNSETTLED, Hint.WRONG_PRODUCT_OR_METER,
                        new Settle(OptionalInt.empty(), Settle.WhyNot.METER_ERROR), Budget.NONE, List.of())));
    }

    private static Difference difference(Stretch from, Stretch to, double steps, double uncertainty, double kelvin, double duv,
                                         OptionalDouble luxRatio) {
        return new Difference(from.line().centre(), to.line().centre(), Covariance.isotropic(uncertainty * STEP), steps, uncertainty,
                OptionalDouble.of(kelvin), OptionalDouble.of(duv), luxRatio);
    }

    private static Stretch stretch(Cove cove, int placement, double fromM, double toM, double du, double dv, double uPerM) {
        double middle = (fromM + toM) / 2;
        UvPrime colour = BASE.plus(du, dv);
        List<Station> stations = new ArrayList<>();
        for (double at = fromM + 0.25; at < toM; at += 1.125) {
            stations.add(station(at, colour.plus(uPerM * (at - middle) + 0.0001 * Math.sin(9 * at), 0.0001 * Math.cos(7 * at)),
                    stations.isEmpty() ? 2 : 1));
        }
        return new Stretch(cove.placements().get(placement), "A", fromM, toM, new Stretch.Range(fromM, fromM), stations, List.of(),
                new Line(middle, colour, SMALL, uPerM, 0, Parts.NONE, Covariance.ZERO),
                new Noise(Repeatability.declared(SetUp.ASSUMED), Covariance.ZERO, Noise.Found.NOTHING));
    }

    private static Station station(double atM, UvPrime colour, int readings) {
        List<Reading> read = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            read.add(new Reading("r" + atM + "-" + i, "C1", new Typed(String.valueOf(atM), atM), Role.WALK, "A", 1,
                    Optional.of(TypedColour.ofUvPrime(typed(colour.u()), typed(colour.v()))), Optional.empty(), "", "", "", 0));
        }
        return new Station("A", atM, read, colour, Covariance.ZERO, OptionalDouble.empty());
    }

    private static Typed typed(double value) {
        return new Typed(String.valueOf(value), value);
    }

    private static List<Station> stations(List<Stretch> stretches) {
        return stretches.stream().flatMap(stretch -> stretch.stations().stream()).toList();
    }
}
