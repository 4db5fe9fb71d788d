package covewalk.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.report.punch.CommonReels;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.PunchWords;
import covewalk.survey.Feed;
import covewalk.survey.LabelLine;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.claim.Allowances;
import covewalk.words.NoteWords;
import covewalk.words.RuleWords;
import covewalk.words.Words;
import java.util.List;

/** The punch list as JSON: the items of the page and of the table. */
public final class PunchJson {

    private final Words words;
    private final PunchWords punch;

    public PunchJson(Words words) {
        this.words = words;
        this.punch = new PunchWords(words);
    }

    public String of(PunchList list, List<String> warnings, String sealCode) {
        Survey survey = list.judgement().survey();
        Limits limits = survey.limits();
        ObjectNode all = Json.object();
        all.put("survey", survey.site().name());
        all.put("visited", survey.visit().date().map(Object::toString).orElse(""));
        all.set("neighbourSteps", Json.number(limits.neighbourSteps(), 4));
        all.put("setBy", limits.setBy());
        all.put("stepRule", limits.stepRule().code());
        all.put("decisionRule", new RuleWords(words).decision(list.judgement()));
        all.put("outcome", words.counts(list.judgement()));
        ArrayNode items = all.putArray("items");
        CommonReels common = new CommonReels(list.items());
        for (PunchItem item : list.items()) {
            ObjectNode object = item(item, common);
            object.set("claimsAllowSteps", ClaimJson.allowance(Allowances.between(item.reels(), limits.stepRule())));
            StateJson.state(list, object, item);
            items.add(object);
        }
        all.set("warnings", Json.texts(warnings));
        all.set("evidence", Json.texts(new NoteWords(words).sentences(list.judgement().notes())));
        all.put("sealCode", sealCode);
        all.set("claims", ClaimJson.of(list.judgement().claims()));
        all.set("noLongerFound", StateJson.gone(list));
        return Json.text(all);
    }

    private ObjectNode item(PunchItem item, CommonReels common) {
        Fault fault = item.fault();
        ObjectNode object = Json.object();
        object.put("item", item.number());
        object.put("cove", item.cove().id());
        object.put("place", item.cove().place());
        object.put("kind", fault.kind().code());
        object.put("verdict", fault.verdict().code());
        object.set("positionM", Json.number(fault.positionM(), 3));
        object.put("positionFtIn", words.numbers().feetInches(fault.positionM()));
        object.set("rangeM", Json.array().add(Json.number(item.fromM(), 3)).add(Json.number(item.toM(), 3)));
        object.put("datum", item.cove().datum());
        ArrayNode reels = object.putArray("reels");
        item.reels().forEach(reel -> reels.add(reel(reel)));
        sums(object, fault);
        action(object, item, common);
        return object;
    }

    private static ObjectNode reel(Reel reel) {
        ObjectNode object = Json.object().put("id", reel.id());
        for (LabelLine line : reel.label()) {
            object.put(line.field(), line.text());
        }
        return object;
    }

    private static void sums(ObjectNode object, Fault fault) {
        Difference difference = fault.difference();
        object.set("steps", Json.number(difference.steps(), 4));
        object.set("standardUncertaintySteps", Json.number(difference.standardUncertaintySteps(), 4));
        object.set("limitSteps", Json.number(fault.limitSteps(), 4));
        object.set("deltaCctK", Json.number(difference.deltaCctK(), 1));
        object.set("deltaDuv", Json.number(difference.deltaDuv(), 6));
        object.put("towards", difference.towards().words());
        object.set("luxRatio", Json.number(difference.luxRatio(), 4));
        object.set("confidenceBeyond", Json.confidence(fault.confidence().beyond()));
        object.set("confidenceWithin", Json.confidence(fault.confidence().within()));
    }

    private void action(ObjectNode object, PunchItem item, CommonReels common) {
        Fault fault = item.fault();
        object.put("suspected", words.suspicion(fault.hint()));
        object.put("checkFirst", words.checkFirst(fault.hint()));
        object.put("toDo", punch.toDo(item, common));
        object.set("readingsToSettle", Json.whole(fault.settle().readings()));
        object.put("whyNot", CheckJson.whyNot(fault.settle()));
        object.put("priority", item.priority().code());
        object.put("priorityReason", punch.priorityReason(item));
        object.set("heightM", Json.number(item.cove().heightM(), 2));
        ArrayNode feeds = object.putArray("feeds");
        item.feeds().forEach(feed -> feeds.add(feed(feed)));
        object.set("cautions", Json.texts(punch.cautions(item)));
        object.put("standsAlsoFor", punch.standsFor(item));
    }

    private static ObjectNode feed(Feed feed) {
        ObjectNode object = Json.object();
        object.set("atM", Json.number(feed.atM(), 3));
        return object.put("driver", feed.driver()).put("circuit", feed.circuit());
    }
}
