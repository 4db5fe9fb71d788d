package covewalk.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.report.punch.GoneItem;
import covewalk.report.punch.PlaceThen;
import covewalk.report.punch.PunchItem;
import covewalk.report.punch.PunchList;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchState;
import covewalk.verdict.Difference;
import java.util.Optional;

/** How the items of a punch list stand, for programs: the items found, and those no longer found. */
public final class StateJson {

    /** The whole list as text. */
    public String of(PunchList list) {
        ObjectNode all = Json.object();
        all.put("survey", list.judgement().survey().site().name());
        all.put("visited", list.judgement().survey().visit().date().map(Object::toString).orElse(""));
        ArrayNode items = all.putArray("items");
        list.items().forEach(item -> items.add(item(list, item)));
        all.set("noLongerFound", gone(list));
        return Json.text(all);
    }

    private static ObjectNode item(PunchList list, PunchItem item) {
        ObjectNode object = Json.object().put("item", item.number());
        object.put("cove", item.cove().id()).put("kind", item.fault().kind().code());
        object.set("positionM", Json.number(item.fault().positionM(), 3));
        object.set("reels", Json.texts(item.fault().reels()));
        object.put("verdict", item.fault().verdict().code());
        figures(object, Optional.of(item.fault().difference()));
        state(list, object, item);
        return object;
    }

    /** What is recorded of an item and what was found before, put at the end of an object. */
    static void state(PunchList list, ObjectNode object, PunchItem item) {
        recorded(list, object, item.state());
        object.set("before", list.before(item).map(StateJson::then).orElse(null));
        list.before().ifPresent(visit -> object.put("beforeVisited", visit.date()));
    }

    /** The items that have a number and are not found any more. */
    static ArrayNode gone(PunchList list) {
        ArrayNode gone = Json.array();
        for (GoneItem item : list.gone()) {
            ObjectNode object = Json.object().put("item", item.state().item());
            item.state().place().ifPresent(place -> place(object, place));
            object.set("partOfItem", Json.whole(item.partOf()));
            object.put("placeRead", item.read());
            object.set("now", list.now(item).map(StateJson::then).orElse(null));
            recorded(list, object, item.state());
            gone.add(object);
        }
        return gone;
    }

    private static void place(ObjectNode object, PunchPlace place) {
        object.put("cove", place.cove()).put("kind", place.kind());
        object.set("positionM", Json.number(place.positionM(), 3));
        object.put("reels", place.reels());
    }

    private static void recorded(PunchList list, ObjectNode object, PunchState state) {
        object.put("numberFixed", list.isFixed(state.item())).put("state", state.stage().code());
        PunchColumn.STATE.forEach(column -> object.put(column.code(), state.text(column)));
    }

    private static ObjectNode then(PlaceThen then) {
        ObjectNode object = Json.object().put("verdict", then.verdict().code());
        figures(object, then.difference());
        object.set("limitSteps", Json.number(then.limitSteps(), 4));
        return object;
    }

    private static void figures(ObjectNode object, Optional<Difference> difference) {
        object.set("steps", difference.map(known -> Json.number(known.steps(), 4)).orElse(NullNode.getInstance()));
        object.set("standardUncertaintySteps", difference.map(known -> Json.number(known.standardUncertaintySteps(), 4))
                .orElse(NullNode.getInstance()));
    }
}
