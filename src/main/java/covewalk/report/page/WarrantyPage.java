package covewalk.report.page;

import covewalk.report.page.SidePage.Section;
import covewalk.report.page.SidePage.Table;
import covewalk.report.punch.Audit;
import covewalk.report.punch.MissingEvidence;
import covewalk.report.punch.Neighbour;
import covewalk.report.punch.PunchWords;
import covewalk.survey.Claim;
import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Placement;
import covewalk.survey.Reading;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.survey.file.Photo;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.claim.WhyOpen;
import covewalk.words.ClaimWords;
import covewalk.words.NoteWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** For who decides on a claim: all that is known of one reel, and what evidence is still missing. It blames nobody. */
public final class WarrantyPage {

    private static final int LONGEST = 60;

    private final Words words;
    private final SideHead head;
    private final ClaimWords claims;
    private final PunchWords punch;

    public WarrantyPage(Words language, PageStyle style) {
        this.words = language.lengthsIn(style.lengths());
        this.head = new SideHead(words, style);
        this.claims = new ClaimWords(words);
        this.punch = new PunchWords(words);
    }

    public SidePage of(Audit audit, Reel reel, List<Photo> photos) {
        Optional<Reel> neighbour = Neighbour.toCompare(audit.judgement(), reel);
        List<Section> sections = new ArrayList<>();
        sections.add(Section.of(words.text("warranty.reel", Shortened.of(reel.id(), LONGEST)),
                Stream.concat(head.label(reel).stream(), head.facts(audit).stream()).toList(), List.of(words.text("dispute.neutral"))));
        sections.add(Section.of(words.text("warranty.claimed"), claimed(audit.judgement().survey().claim()), List.of()));
        sections.add(Section.of(words.text("warranty.installed"), List.of(), List.of(), installed(audit.judgement().survey(), reel)));
        sections.add(Section.of(words.text("warranty.measured"), List.of(), againstClaim(audit, reel), joints(audit, reel)));
        sections.add(Section.of(words.text("warranty.conditions"), conditions(audit), new NoteWords(words).sentences(audit.judgement().notes())));
        sections.add(Section.of(words.text("warranty.readings"), List.of(), List.of(), readings(audit, reel)));
        neighbour.ifPresent(good -> sections.add(Section.of(words.text("warranty.neighbour", Shortened.of(good.id(), LONGEST)),
                head.label(good), List.of(words.text("warranty.neighbour.why")), readings(audit, good))));
        sections.add(new Section(words.text("warranty.photos"), false, List.of(), photos.isEmpty() ? List.of(words.text("warranty.photos.none"))
                : List.of(words.text("warranty.photos.colour")), List.of(), List.of(), photos));
        sections.add(Section.of(words.text("warranty.missing"), List.of(), new MissingEvidence(words).of(audit, reel, neighbour, photos)));
        return head.page(audit, words.text("warranty.name", Shortened.of(reel.id(), LONGEST)), sections);
    }

    private List<Fact> claimed(Optional<Claim> claim) {
        return List.of(claimed("symptom", claim, Claim::symptom), claimed("first-noticed", claim, Claim::firstNoticed),
                claimed("hours", claim, Claim::hoursADay), claimed("surroundings", claim, Claim::surroundings),
                claimed("controls", claim, Claim::controls), claimed("pieces", claim, Claim::piecesKept));
    }

    private Fact claimed(String key, Optional<Claim> claim, Function<Claim, String> said) {
        return head.fact("warranty.claim." + key, claim.map(said).orElse(""));
    }

    private Table installed(Survey survey, Reel reel) {
        List<List<String>> rows = new ArrayList<>();
        for (Cove cove : survey.coves()) {
            cove.placements().stream().filter(placement -> placement.reel().equals(reel.id()))
                    .forEach(placement -> rows.add(installed(cove, placement)));
        }
        return new Table("", "installed", Stream.of("cove", "from-to", "known", "installed", "height", "feeds")
                .map(column -> words.text("warranty.column." + column)).toList(), rows);
    }

    private List<String> installed(Cove cove, Placement placement) {
        String feeds = cove.feeds().stream().map(this::feed).collect(Collectors.joining("; "));
        return List.of(punch.cove(cove), words.text("item.from-to", words.lengths().first(placement.fromM(), placement.toM())), words.text("warranty.known." + placement.knownFrom().code()),
                noted(placement.installed()), punch.height(cove), feeds.isEmpty() ? words.text("item.no-feed") : feeds);
    }

    private String feed(Feed feed) {
        return words.text("warranty.feed", words.lengths().first(feed.atM()), noted(feed.driver()), noted(feed.circuit()));
    }

    private String noted(String text) {
        return text.isBlank() ? words.text("reel.not-noted") : Shortened.of(text, LONGEST);
    }

    private List<String> againstClaim(Audit audit, Reel reel) {
        List<String> said = new ArrayList<>();
        audit.judgement().claims().stream().filter(claim -> claim.reel().id().equals(reel.id())).forEach(claim -> {
            said.add(words.text("dispute.claim", claims.reel(claim), claims.claim(claim), claims.measured(claim), claims.verdict(claim)));
            said.add(claim.why() == WhyOpen.NONE ? "" : words.text("warranty.open", claims.why(claim.why())));
        });
        said.add(words.text(said.isEmpty() ? "warranty.no-claim" : "claim.meaning"));
        said.removeIf(String::isEmpty);
        return said;
    }

    private Table joints(Audit audit, Reel reel) {
        List<List<String>> rows = new ArrayList<>();
        for (CoveJudgement cove : audit.judgement().coves()) {
            cove.joints().stream().filter(joint -> joint.reels().contains(reel.id())).forEach(joint -> rows.add(joint(cove, joint)));
        }
        return new Table(words.text("warranty.joints"), Stream.of("where", "reels", "steps", "uncertainty", "verdict")
                .map(column -> words.text("warranty.column." + column)).toList(), rows);
    }

    private List<String> joint(CoveJudgement cove, JudgedJoint joint) {
        return List.of(words.text("state.where", Shortened.of(cove.cove().id(), LONGEST), punch.lengths().first(joint.positionM())),
                Shortened.of(String.join(" | ", joint.reels()), LONGEST), figure(joint, Difference::steps),
                figure(joint, Difference::standardUncertaintySteps), words.verdict(joint.verdict()));
    }

    private String figure(JudgedJoint joint, Function<Difference, Double> figure) {
        return joint.difference().map(figure).map(words.numbers()::steps).orElse("–");
    }

    private List<Fact> conditions(Audit audit) {
        Survey survey = audit.judgement().survey();
        List<Fact> facts = new ArrayList<>();
        facts.add(head.fact("warranty.minutes", survey.visit().minutesOn().isPresent()
                ? words.numbers().fixed(survey.visit().minutesOn().getAsInt(), 0) + " min" : ""));
        for (SetUp setUp : survey.setUps()) {
            facts.add(head.fact("warranty.set-up", words.text("warranty.set-up.is", Shortened.of(setUp.id(), LONGEST),
                    words.text("warranty.reads." + setUp.reads().code()), words.numbers().percent(setUp.dimPercent() / 100))));
        }
        facts.add(head.fact("warranty.temperature", ""));
        return facts;
    }

    /** As typed, in the order of the log, with what was corrected. */
    private Table readings(Audit audit, Reel reel) {
        Survey survey = audit.judgement().survey();
        List<Reading> own = audit.log().stream().filter(reading -> survey.cove(reading.cove())
                .flatMap(cove -> cove.placementAt(reading.positionM().value())).filter(placement -> placement.reel().equals(reel.id())).isPresent())
                .toList();
        List<List<String>> rows = new ReadingsPage.Maker(words, survey.firstSetUp().id()).of(own).rows().stream()
                .map(row -> Stream.concat(row.cells().stream(), Stream.of(Stream.of(row.remark(), row.note()).filter(text -> !text.isEmpty())
                        .collect(Collectors.joining("; ")))).toList()).toList();
        return new Table("", Stream.of("reading", "place", "typed", "lux", "taken", "note")
                .map(column -> words.text("readings.column." + column)).toList(), rows);
    }
}
