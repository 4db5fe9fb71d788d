package covewalk.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.punch.Audit;
import covewalk.report.punch.Sample;
import covewalk.words.LengthUnit;
import covewalk.words.Words;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A report for people who read a tape in feet and inches: drawings, tables and sentences, not only the punch list. */
class FeetFirstTest {

    private static final Pattern METRES = Pattern.compile("\\d m\\b");

    private final Page feet = Pages.of(Sample.judgement(), "", new PageStyle(Paper.LETTER, LengthUnit.FT));
    private final Page metres = Pages.of(Sample.judgement(), "");

    @Test
    void drawingsHaveNoMetres() {
        CovePage cove = feet.coves().get(0);
        for (String picture : cove.pictures()) {
            assertFalse(METRES.matcher(picture).find(), picture);
        }
        assertTrue(cove.pictures().get(0).contains("10 ft<"), cove.pictures().get(0));
        assertTrue(cove.pictures().get(0).contains("16 ft 4 3/4 in"), "what the joint at 5 m says of itself");
    }

    @Test
    void tablesHaveFeetAndHeadingsThatDoNotNameTheMetre() {
        CovePage cove = feet.coves().get(0);
        assertEquals("at", feet.column("at"));
        assertEquals("at m", metres.column("at"));
        assertTrue(cove.stations().stream().allMatch(row -> row.get(0).endsWith("\u00a0in")), cove.stations().toString());
        assertTrue(cove.stretches().stream().allMatch(row -> row.get(0).matches("\\d+\u00a0ft\u00a0\\S* to \\d+\u00a0ft\u00a0\\S*in")), cove.stretches().toString());
        assertTrue(metres.coves().get(0).stretches().stream().allMatch(row -> row.get(0).matches("[\\d.]+ to [\\d.]+")));
    }

    /** A foot is 0.3048 m, by the international yard of 1959. */
    @Test
    void aSlopeIsPerFoot() {
        assertEquals(0.3048, Words.english().lengthsIn(LengthUnit.FT).lengths().perUnit(1));
        assertEquals(1, Words.english().lengths().perUnit(1));
        assertEquals("drift, steps/ft", feet.column("slope"));
    }

    @Test
    void theFirstPageNamesPlacesInFeet() {
        assertTrue(feet.front().next().stream().anyMatch(step -> step.contains(" ft ")), feet.front().next().toString());
        assertTrue(feet.front().next().stream().noneMatch(step -> METRES.matcher(step).find()), feet.front().next().toString());
        assertTrue(metres.front().next().stream().anyMatch(step -> METRES.matcher(step).find()), metres.front().next().toString());
    }

    @Test
    void thePageOfADisputeHasFeetFirst() {
        SidePage page = new SpecifierPage(Words.english(), new PageStyle(Paper.LETTER, LengthUnit.FT)).of(Pages.audit(Sample.judgement(), ""));
        SidePage.Section joint = page.sections().get(0);
        assertTrue(joint.heading().contains("16 ft 4 3/4 in (5.00 m)"), joint.heading());
        assertFalse(METRES.matcher(joint.pictures().get(0)).find(), joint.pictures().get(0));
    }

    @Test
    void aDossierHasFeetFirst() {
        Audit audit = Pages.audit(Sample.judgement(), "");
        SidePage page = new WarrantyPage(Words.english(), new PageStyle(Paper.LETTER, LengthUnit.FT))
                .of(audit, audit.judgement().survey().reels().get(0), List.of());
        String installed = page.sections().stream().flatMap(section -> section.tables().stream())
                .filter(table -> table.style().equals("installed")).map(Object::toString).findFirst().orElseThrow();
        assertTrue(installed.contains("0 ft 0 in to 16 ft 4 3/4 in"), installed);
    }

    /** Of joints, that is; what is said of survey.json names the metres that stand there. */
    @Test
    void whatWeakensTheEvidenceNamesPlacesInFeet() {
        List<String> weakens = ofJoints(feet);
        assertFalse(weakens.isEmpty());
        assertTrue(weakens.stream().noneMatch(sentence -> METRES.matcher(sentence).find()), weakens.toString());
        assertTrue(ofJoints(metres).stream().allMatch(sentence -> METRES.matcher(sentence).find()));
    }

    private static List<String> ofJoints(Page page) {
        return page.coves().stream().flatMap(cove -> cove.weakens().stream()).filter(sentence -> sentence.startsWith("At ")).toList();
    }
}
