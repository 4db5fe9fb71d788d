package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/** The whole of {@code survey.json}. */
final class SurveyEntry {

    static final String FORMAT = "covewalk-survey/1";

    private SurveyEntry() {
    }

    /** The survey; problems go to the fields'. */
    static Survey read(Fields fields, Places places) {
        Fields site = fields.object("site");
        fields.needed("limits");
        List<SetUp> setUps = fields.objects("setups").stream().map(SetUpEntry::read).toList();
        return new Survey(new Site(site.text("name"), site.text("address")), VisitEntry.read(fields.object("visit")),
                setUps.isEmpty() ? List.of(SetUp.ASSUMED) : setUps, LimitsEntry.read(fields.object("limits")),
                fields.objects("reels").stream().map(ReelEntry::read).toList(),
                fields.objects("coves").stream().map(cove -> CoveEntry.read(cove, places)).toList(),
                ClaimEntry.read(fields));
    }

    /** Whether this program can read it at all; if not, says why. */
    static boolean isOurs(Fields fields) {
        String format = fields.needed("format").isPresent() ? fields.text("format") : "";
        if (!format.isEmpty() && !format.equals(FORMAT)) {
            fields.add("format", Problem.refusal("json.format", format, FORMAT));
        }
        return format.equals(FORMAT);
    }

    /** The survey written over what the file holds, so that fields we do not know stay. */
    static ObjectNode write(Survey survey, Optional<ObjectNode> old) {
        Overlay to = new Overlay(old.orElseGet(JsonNodeFactory.instance::objectNode));
        to.text("format", FORMAT)
                .object("site", site -> site.text("name", survey.site().name()).text("address", survey.site().address()))
                .object("visit", visit -> VisitEntry.write(visit, survey.visit()))
                .list("setups", survey.setUps(), byId(SetUp::id), SetUpEntry::write)
                .object("limits", limits -> LimitsEntry.write(limits, survey.limits()))
                .list("reels", survey.reels(), byId(Reel::id), ReelEntry::write)
                .list("coves", survey.coves(), byId(Cove::id), CoveEntry::write);
        ClaimEntry.write(to, survey.claim());
        return to.done();
    }

    private static <T> BiPredicate<T, JsonNode> byId(Function<T, String> id) {
        return (item, node) -> id.apply(item).equals(node.path("id").asText());
    }
}
