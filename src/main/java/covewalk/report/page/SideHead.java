package covewalk.report.page;

import covewalk.report.punch.Audit;
import covewalk.report.punch.PunchWords;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.words.RuleWords;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What a page for one reader says of the survey it comes from. */
final class SideHead {

    private static final int LONGEST = 300;

    private final Words words;
    private final PageStyle style;

    SideHead(Words words, PageStyle style) {
        this.words = words;
        this.style = style;
    }

    SidePage page(Audit audit, String name, List<SidePage.Section> sections) {
        Survey survey = audit.judgement().survey();
        String site = survey.site().name().isBlank() ? words.text("page.no-site") : Shortened.of(survey.site().name(), LONGEST);
        return new SidePage(words, style, RunningHead.of(name, survey, audit.sealCode(), words), name, site, sections);
    }

    /** Visit, inspector, meters, seal, and the limit. */
    List<Fact> facts(Audit audit) {
        List<Fact> facts = new ArrayList<>(source(audit));
        facts.add(fact("page.label.limit", new RuleWords(words).limits(audit.judgement().survey().limits())));
        return facts;
    }

    /** Visit, inspector, meters, seal. */
    List<Fact> source(Audit audit) {
        Survey survey = audit.judgement().survey();
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("page.label.address", survey.site().address()));
        facts.add(fact("side.visit", survey.visit().date().map(Object::toString).orElse("")));
        facts.add(fact("page.label.inspector", survey.visit().inspector()));
        for (SetUp setUp : survey.setUps()) {
            facts.add(fact("page.label.meter", new PunchWords(words).meter(setUp)));
        }
        facts.add(fact("side.seal", audit.sealCode().isEmpty() ? words.text("page.not-sealed") : audit.sealCode()));
        return facts;
    }

    /** Says so where nothing is noted. */
    Fact fact(String key, String text) {
        return new Fact(words.text(key), text.isBlank() ? words.text("reel.not-noted") : Shortened.of(text, LONGEST));
    }

    /** The whole label, line by line, and what else is known of the reel. */
    List<Fact> label(Reel reel) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("reel.field.maker", reel.maker()));
        facts.add(fact("reel.field.product", reel.product()));
        facts.add(fact("reel.field.nominalCct", reel.nominalCct().isPresent() ? reel.nominalCct().getAsInt() + " K" : ""));
        facts.add(fact("reel.field.bin", reel.bin()));
        facts.add(fact("reel.field.lot", reel.lot()));
        facts.add(fact("reel.field.serial", reel.serial()));
        facts.add(fact("reel.field.made", reel.made()));
        facts.add(fact("reel.field.gtin", reel.gtin()));
        facts.add(fact("warranty.invoice", reel.invoice()));
        facts.add(fact("warranty.length", reel.lengthM().isPresent() ? words.lengths().first(reel.lengthM().getAsDouble()) : ""));
        return facts;
    }
}
