package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import covewalk.survey.Feed;
import java.util.List;

/** The feeds of a cove in {@code survey.json}. */
final class FeedEntry {

    private static final Range POSITION = Range.from(-100_000, 100_000);

    private FeedEntry() {
    }

    static List<Feed> read(Fields cove) {
        return cove.objects("feeds").stream()
                .map(fields -> new Feed(fields.neededNumber("atM", POSITION, 0), fields.text("driver"), fields.text("circuit")))
                .toList();
    }

    static void write(Overlay cove, List<Feed> feeds) {
        cove.list("feeds", feeds, FeedEntry::isSame, (to, feed) ->
                to.number("atM", feed.atM()).text("driver", feed.driver()).text("circuit", feed.circuit()));
    }

    private static boolean isSame(Feed feed, JsonNode node) {
        return node.path("atM").asDouble(Double.NaN) == feed.atM();
    }
}
