package covewalk.report.page;

import covewalk.plot.Strip;
import covewalk.plot.Svg;
import covewalk.report.page.SidePage.Section;
import covewalk.report.page.SidePage.Table;
import covewalk.report.punch.Audit;
import covewalk.report.punch.PunchWords;
import covewalk.report.text.Explanation;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.claim.Allowances;
import covewalk.verdict.limit.Verdict;
import covewalk.words.ClaimWords;
import covewalk.words.ReelWords;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** For who settles a dispute: each joint that is beyond the limit or unsettled on a sheet of its own, in neutral words. */
public final class SpecifierPage {

    private static final int LONGEST = 60;

    private final Words words;
    private final PageStyle style;
    private final PunchWords punch;
    private final ClaimWords claims;

    public SpecifierPage(Words language, PageStyle style) {
        this.words = language.lengthsIn(style.lengths());
        this.style = style;
        this.punch = new PunchWords(words);
        this.claims = new ClaimWords(words);
    }

    public SidePage of(Audit audit) {
        Judgement judgement = audit.judgement();
        SideHead head = new SideHead(words, style);
        List<Section> sections = new ArrayList<>();
        for (CoveJudgement cove : judgement.coves()) {
            cove.joints().stream().filter(joint -> joint.verdict() == Verdict.BEYOND || joint.verdict() == Verdict.UNSETTLED)
                    .forEach(joint -> sections.add(section(audit, cove, joint, head, !sections.isEmpty())));
        }
        if (sections.isEmpty()) {
            sections.add(Section.of(words.text("dispute.none"), head.facts(audit), List.of(new RuleWords(words).decision(judgement))));
        }
        return head.page(audit, words.text("dispute.name"), sections);
    }

    private Section section(Audit audit, CoveJudgement cove, JudgedJoint joint, SideHead head, boolean ownSheet) {
        Judgement judgement = audit.judgement();
        String heading = words.text("dispute.joint", punch.cove(cove.cove()), punch.lengths().first(joint.positionM()),
                punch.lengths().second(joint.positionM()), punch.datum(cove.cove()));
        return new Section(heading, ownSheet, head.source(audit), sentences(judgement, joint), List.of(Svg.of(Strip.of(cove, words))),
                Stream.concat(labels(judgement, joint).stream(), sums(judgement, cove, joint).stream()).toList(), List.of());
    }

    private List<String> sentences(Judgement judgement, JudgedJoint joint) {
        Limits limits = judgement.survey().limits();
        Difference difference = joint.difference().orElseThrow();
        List<String> said = new ArrayList<>();
        said.add(words.text("dispute.measured", words.numbers().steps(difference.steps()),
                words.numbers().steps(difference.standardUncertaintySteps()), words.towards(difference.towards())));
        said.add(words.text("dispute.verdict", words.verdict(joint.verdict()), words.numbers().plain(limits.neighbourSteps(), 2),
                new RuleWords(words).setBy(limits)));
        if (joint.verdict() == Verdict.UNSETTLED) {
            said.add(words.text("explain.settle", words.toSettle(joint.settle())));
        }
        said.addAll(ofLabels(judgement, joint, difference));
        said.add(new RuleWords(words).decision(judgement));
        said.add(words.text("dispute.neutral"));
        return said;
    }

    private List<String> ofLabels(Judgement judgement, JudgedJoint joint, Difference difference) {
        Limits limits = judgement.survey().limits();
        List<String> said = new ArrayList<>();
        new Allowances(judgement.survey()).between(joint.reels()).ifPresentOrElse(allowance -> {
            said.add(claims.allowance(allowance, difference.steps(), limits.neighbourSteps()));
            said.add(words.text("dispute.claims-and-limit"));
        }, () -> said.add(words.text("dispute.no-claims")));
        judgement.claims().stream().filter(claim -> joint.reels().contains(claim.reel().id()))
                .forEach(claim -> said.add(words.text("dispute.claim", claims.reel(claim), claims.claim(claim), claims.measured(claim),
                        claims.verdict(claim))));
        return said;
    }

    private List<Table> labels(Judgement judgement, JudgedJoint joint) {
        ReelsById reels = new ReelsById(judgement.survey());
        List<Reel> both = joint.reels().stream().flatMap(id -> reels.find(id).stream()).toList();
        if (both.size() != 2) {
            return List.of();
        }
        List<List<String>> rows = new ReelWords(words).sideBySide(both.get(0), both.get(1)).stream()
                .map(row -> List.of(row.field(), Shortened.of(row.before(), LONGEST), Shortened.of(row.after(), LONGEST))).toList();
        return List.of(new Table(words.text("dispute.labels"), List.of(words.text("page.label-line"),
                Shortened.of(both.get(0).id(), LONGEST), Shortened.of(both.get(1).id(), LONGEST)), rows));
    }

    /** The sums in words, and the budget of the uncertainty. */
    private List<Table> sums(Judgement judgement, CoveJudgement cove, JudgedJoint joint) {
        List<Explanation.Line> lines = new Explanation(words).lines(judgement, cove, joint.positionM()).orElse(List.of());
        List<List<String>> rows = lines.stream().map(Explanation.Line::cells).filter(cells -> cells.size() == 4).toList();
        String said = lines.stream().map(Explanation.Line::cells).filter(cells -> cells.size() == 1).map(cells -> cells.get(0))
                .filter(sentence -> !sentence.endsWith(":")).collect(Collectors.joining(" ")); // that one leads to the rows
        return Stream.of(new Table(words.text("dispute.sums"), List.of(), List.of(List.of(said))),
                new Table(words.text("dispute.budget"), Stream.of("steps", "part", "side", "source")
                        .map(column -> words.text("dispute.column." + column)).toList(), rows)).filter(table -> !table.rows().isEmpty()).toList();
    }
}
