package covewalk.survey.file.description;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import java.util.List;

/** A cove in {@code survey.json}. */
final class CoveEntry {

    private static final Range LENGTH = Range.above(0, 100_000);
    private static final Range HEIGHT = Range.from(-1000, 1000);

    private CoveEntry() {
    }

    static Cove read(Fields fields, Places places) {
        List<Placement> placements = PlacementEntry.read(fields, places);
        return new Cove(fields.neededText("id"), fields.text("place"), fields.neededNumber("lengthM", LENGTH, 1),
                fields.flag("closed"), fields.text("datum"), fields.number("heightM", HEIGHT), fields.text("surface"),
                ColourEntry.read(fields, "target"), FeedEntry.read(fields), placements);
    }

    static void write(Overlay to, Cove cove) {
        to.text("id", cove.id()).text("place", cove.place()).number("lengthM", cove.lengthM())
                .flag("closed", cove.closed()).text("datum", cove.datum()).number("heightM", cove.heightM())
                .text("surface", cove.surface());
        ColourEntry.write(to, "target", cove.target());
        FeedEntry.write(to, cove.feeds());
        PlacementEntry.write(to, cove.placements());
    }
}
