package covewalk.app.faults;

import covewalk.app.faults.Card.Line;
import covewalk.app.strip.Finding;
import covewalk.app.strip.FindingWords;
import covewalk.app.text.Texts;
import covewalk.report.text.Explanation;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchWords;
import covewalk.survey.Cove;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.survey.file.punch.PunchState;
import covewalk.survey.ReelsById;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.Judgement;
import covewalk.verdict.claim.Allowances;
import covewalk.words.Caution;
import covewalk.words.CautionWords;
import covewalk.words.ClaimWords;
import covewalk.words.LabelRow;
import covewalk.words.LengthUnit;
import covewalk.words.NoteWords;
import covewalk.words.Numbers;
import covewalk.words.ReelWords;
import covewalk.words.RuleWords;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Puts findings into words for their card. */
final class CardWords {

    private final Texts texts;
    private final Words words;
    private final Numbers numbers;
    private final FindingWords findings;
    private final PunchWords punch;

    CardWords(Texts texts, boolean feet) {
        this.texts = texts;
        this.words = texts.words().lengthsIn(feet ? LengthUnit.FT : LengthUnit.M);
        this.numbers = texts.numbers();
        this.findings = new FindingWords(texts, feet);
        this.punch = new PunchWords(words);
    }

    Card card(Finding finding, Judgement judgement) {
        ReelsById known = new ReelsById(judgement.survey());
        List<Reel> reels = finding.reels().stream().map(id -> known.find(id).orElseGet(() -> withoutLabel(id))).toList();
        Limits limits = judgement.survey().limits();
        return new Card(finding, findings.place(finding), sentence(finding), where(finding, reels), numbers(finding, limits),
                finding.fault().map(this::checkFirst).orElseGet(() -> nothingToPutRight(finding)), finding.reels(), labels(reels),
                notes(finding, reels, limits), cautions(finding, reels), reminders(finding, reels),
                new Explanation(words).lines(judgement, finding.cove(), finding.positionM()).orElse(List.of()));
    }

    private static Reel withoutLabel(String id) {
        return new Reel(id, "", "", "", OptionalInt.empty(), "", "", "", "", "", OptionalDouble.empty(), OptionalDouble.empty(),
                Optional.empty());
    }

    private String sentence(Finding finding) {
        return finding.difference().map(difference -> texts.get("sentence",
                texts.get("found." + finding.kind().code(), numbers.steps(difference.steps()), words.towards(difference.towards())),
                texts.get("against." + finding.verdict().code(), numbers.plain(finding.limitSteps(), 2),
                        numbers.fixed(finding.timesTheLimit(), 1))))
                .orElseGet(() -> texts.get("sentence.not-read", words.toSettle(finding.settle())));
    }

    private List<String> where(Finding finding, List<Reel> reels) {
        Cove cove = finding.cove().cove();
        String named = cove.place().isBlank() ? words.text("item.cove.unnamed", cove.id())
                : words.text("item.cove", cove.id(), cove.place());
        String datum = cove.datum().isBlank() ? words.text("place.no-datum") : cove.datum();
        String range = finding.spreads() || finding.toM() - finding.fromM() < 0.005 ? ""
                : texts.get("range", findings.lengths().both(finding.fromM()), findings.lengths().both(finding.toM()));
        return Stream.of(named, findings.placeInOther(finding), texts.get("datum", datum), range,
                punch.height(cove), item(finding, reels).map(punch::feed).orElse("")).filter(text -> !text.isEmpty()).toList();
    }

    private static Optional<PunchItem> item(Finding finding, List<Reel> reels) {
        return finding.fault().map(fault -> new PunchItem(finding.cove().cove(), fault, reels, List.of(), PunchState.open(1)));
    }

    private List<Line> numbers(Finding finding, Limits limits) {
        List<Line> lines = new ArrayList<>();
        finding.difference().ifPresent(difference -> {
            add(lines, "difference", findings.measured(difference));
            add(lines, "limit", words.text("item.limit.steps", numbers.plain(finding.limitSteps(), 2)) + ", "
                    + new RuleWords(words).setBy(limits));
            add(lines, "confidence", words.text("item.confidence", numbers.confidence(finding.confidence().beyond()),
                    numbers.confidence(finding.confidence().within())));
            colour(difference, lines);
        });
        return lines;
    }

    private void colour(Difference difference, List<Line> lines) {
        lines.add(new Line(texts.get("numbers.uv"), signed(difference.deltaUPrime(), 5) + ", " + signed(difference.deltaVPrime(), 5)));
        if (difference.deltaCctK().isPresent() && difference.deltaDuv().isPresent()) {
            lines.add(new Line(texts.get("numbers.cct"), texts.get("numbers.cct.both", signed(difference.deltaCctK().getAsDouble(), 0),
                    signed(difference.deltaDuv().getAsDouble(), 4))));
        }
        add(lines, "lux", difference.luxRatio().isEmpty() ? words.text("item.no-lux")
                : numbers.fixed(difference.luxRatio().getAsDouble(), 2));
    }

    private String signed(double value, int decimals) {
        String digits = numbers.fixed(value, decimals);
        return value > 0 && digits.chars().anyMatch(c -> c >= '1' && c <= '9') ? "+" + digits : digits;
    }

    private void add(List<Line> lines, String label, String text) {
        lines.add(new Line(words.text("item.label." + label), text));
    }

    private List<Line> checkFirst(Fault fault) {
        List<Line> lines = new ArrayList<>();
        add(lines, "check", words.checkFirst(fault.hint()));
        add(lines, "suspected", words.suspicion(fault.hint()));
        add(lines, "do", punch.toDo(fault));
        return lines;
    }

    private List<Line> nothingToPutRight(Finding finding) {
        return List.of(new Line(words.text("item.label.do"),
                texts.get(finding.difference().isPresent() ? "do.within" : "do.not-read")));
    }

    private List<LabelRow> labels(List<Reel> reels) {
        return reels.isEmpty() ? List.of() : new ReelWords(words).sideBySide(reels.get(0), reels.get(reels.size() - 1));
    }

    private List<String> notes(Finding finding, List<Reel> reels, Limits limits) {
        List<String> notes = new ArrayList<>(new NoteWords(words).sentences(finding.notes()));
        finding.difference().ifPresent(difference -> Allowances.between(reels, limits.stepRule()).ifPresent(allowance ->
                notes.add(new ClaimWords(words).allowance(allowance, difference.steps(), finding.limitSteps()))));
        return notes;
    }

    private List<String> cautions(Finding finding, List<Reel> reels) {
        return item(finding, reels).map(punch::cautions).orElse(List.of());
    }

    /** The full cautions for what somebody is going to do there. */
    private List<Card.Cautions> reminders(Finding finding, List<Reel> reels) {
        CautionWords cautions = new CautionWords(words);
        return item(finding, reels).stream().flatMap(item -> Stream.of(Caution.Group.HEIGHT, Caution.Group.ELECTRICAL, Caution.Group.LIGHT)
                .filter(group -> group != Caution.Group.HEIGHT || item.atHeight())
                .filter(group -> group != Caution.Group.ELECTRICAL || item.touchesWiring()))
                .map(group -> new Card.Cautions(cautions.group(group), cautions.of(group).stream().map(cautions::sentence).toList()))
                .toList();
    }
}
