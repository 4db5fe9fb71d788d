package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import covewalk.survey.Placement;
import covewalk.survey.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The placements of a cove in {@code survey.json}; they may stand there in any order. */
final class PlacementEntry {

    private static final Range POSITION = Range.from(0, 100_000);
    private static final String NAME = "placements";

    private PlacementEntry() {
    }

    private record Placed(Placement placement, Fields fields) {
    }

    static List<Placement> read(Fields cove, Places places) {
        cove.needed(NAME);
        List<Placed> read = new ArrayList<>();
        for (Fields fields : cove.objects(NAME)) {
            placement(fields).ifPresent(placement -> read.add(new Placed(placement, fields)));
        }
        read.sort(Comparator.comparing(Placed::placement, Placement.ALONG_THE_COVE));
        for (int i = 0; i < read.size(); i++) {
            Fields fields = read.get(i).fields;
            if (fields.index() != i) {
                places.alias(cove.path(NAME + "[" + i + "]"), fields.path());
            }
        }
        return read.stream().map(Placed::placement).toList();
    }

    private static Optional<Placement> placement(Fields fields) {
        String reel = fields.neededText("reel");
        double from = fields.neededNumber("fromM", POSITION, Double.NaN);
        double to = fields.neededNumber("toM", POSITION, Double.NaN);
        Placement.KnownFrom known = fields.word("knownFrom", Placement.KnownFrom::of, "seen, as-built, assumed")
                .orElse(Placement.KnownFrom.SEEN);
        String installed = fields.text("installed");
        if (to <= from) {
            fields.add("toM", Problem.refusal("json.placement-order", text(to), text(from)));
        }
        return to > from ? Optional.of(new Placement(reel, from, to, known, installed)) : Optional.empty();
    }

    private static String text(double metres) {
        return Double.toString(metres);
    }

    static void write(Overlay cove, List<Placement> placements) {
        cove.list(NAME, placements, PlacementEntry::isSame, PlacementEntry::write);
    }

    private static boolean isSame(Placement placement, JsonNode node) {
        return placement.reel().equals(node.path("reel").asText()) && node.path("fromM").asDouble(-1) == placement.fromM();
    }

    private static void write(Overlay to, Placement placement) {
        to.text("reel", placement.reel()).number("fromM", placement.fromM()).number("toM", placement.toM())
                .text("knownFrom", placement.knownFrom().code()).text("installed", placement.installed());
    }
}
