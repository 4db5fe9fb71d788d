package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Bounds;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Writing;
import covewalk.survey.Feed;
import java.util.List;
import java.util.Map;

/** Where a cove is fed with power, from which driver and circuit. */
final class FeedKind implements Kind<Feed> {

    private static final Bounds POSITION = Bounds.from(0, 100_000);

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("atM"), Ask.typed("driver"), Ask.typed("circuit"));
    }

    @Override
    public Map<String, String> texts(Feed feed, Writing writing) {
        return Map.of("atM", writing.length(feed.atM()), "driver", feed.driver(), "circuit", feed.circuit());
    }

    @Override
    public Feed read(Answers answers, Feed before) {
        return new Feed(answers.neededLength("atM", before.atM(), POSITION), answers.text("driver", before.driver()),
                answers.text("circuit", before.circuit()));
    }
}
