package covewalk.report.page;

import covewalk.report.punch.LadderStop;
import covewalk.report.punch.LadderStops;
import covewalk.report.punch.PunchWords;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A ladder stop as it is printed.
 *
 * @param title its number, cove and position
 * @param where place, datum and height
 * @param caution for working up there; empty where none applies
 */
public record StopPage(int number, String title, String where, String caution, List<ItemPage> items) {

    /** Makes stops for a page. */
    static final class Maker {

        private final Words words;
        private final PunchWords punch;
        private final ItemPage.Maker items;

        Maker(Words words, PunchWords punch, ItemPage.Maker items) {
            this.words = words;
            this.punch = punch;
            this.items = items;
        }

        StopPage stop(LadderStop stop) {
            String key = stop.items().size() == 1 ? "stop.title" : "stop.title.reach";
            return new StopPage(stop.number(), words.text(key, words.numbers().fixed(stop.number(), 0), punch.cove(stop.cove()),
                    punch.lengths().first(stop.positionM()), punch.lengths().second(stop.positionM()),
                    punch.lengths().first(LadderStops.REACH_M)),
                    words.text("stop.where", punch.datum(stop.cove()), punch.height(stop.cove())),
                    stop.items().get(0).atHeight() ? punch.heightCaution(stop.cove()) : "", made(stop));
        }

        private List<ItemPage> made(LadderStop stop) {
            List<ItemPage> made = new ArrayList<>();
            stop.items().forEach(item -> made.add(items.item(item)));
            return made;
        }
    }
}
