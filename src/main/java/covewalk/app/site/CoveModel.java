package covewalk.app.site;

import covewalk.app.forms.Description;
import covewalk.app.forms.Form;
import covewalk.app.forms.Items;
import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Placement;
import covewalk.survey.Problem;
import covewalk.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** The cove that is described: itself, what lies in it, and where it is fed. */
final class CoveModel {

    private final Description description;
    private final Items<Cove> coves;
    private final Form<Cove> form;
    private final Items<Placement> placements;
    private final Form<Placement> placement;
    private final Items<Feed> feeds;
    private final Form<Feed> feed;

    CoveModel(Description description, Items<Cove> coves, Supplier<Writing> writing, Supplier<ReelFinder> finder, Texts texts) {
        this.description = description;
        this.coves = coves;
        form = new Form<>("cove", new CoveKind(), description, writing, texts);
        placements = inside("placements", Cove::placements, Neighbours::giveWay);
        placement = new Form<>("placement", new PlacementKind(finder), description, writing, texts);
        feeds = inside("feeds", Cove::feeds, Cove::withFeeds);
        feed = new Form<>("feed", new FeedKind(), description, writing, texts);
        placements.chosenProperty().addListener((property, before, now) -> placement.on(placements.part(now.intValue())));
        feeds.chosenProperty().addListener((property, before, now) -> feed.on(feeds.part(now.intValue())));
        coves.chosenProperty().addListener((property, before, now) -> turn());
        turn();
    }

    private void turn() {
        form.on(coves.part(coves.chosenProperty().get()));
        placements.choose(-1);
        placements.follow();
        feeds.choose(-1);
        feeds.follow();
        placement.on(placements.part(-1));
        feed.on(feeds.part(-1));
    }

    private <T> Items<T> inside(String list, Function<Cove, List<T>> in, BiFunction<Cove, List<T>, Cove> put) {
        return new Items<>(description, () -> "coves[" + index() + "]." + list,
                survey -> in(survey).map(in).orElse(List.of()),
                (survey, items) -> with(survey, cove -> put.apply(cove, items)));
    }

    private int index() {
        return coves.chosenProperty().get();
    }

    private Optional<Cove> in(Survey survey) {
        return index() >= 0 && index() < survey.coves().size() ? Optional.of(survey.coves().get(index())) : Optional.empty();
    }

    private Survey with(Survey survey, UnaryOperator<Cove> change) {
        List<Cove> changed = new ArrayList<>(survey.coves());
        changed.set(index(), change.apply(changed.get(index())));
        return survey.withCoves(changed);
    }

    /** The cove as it is now; empty where none is described. */
    Optional<Cove> cove() {
        return description.survey() == null ? Optional.empty() : in(description.survey());
    }

    Survey survey() {
        return description.survey();
    }

    List<Problem> change(UnaryOperator<Cove> change) {
        return description.change(survey -> with(survey, change));
    }

    /** @param change of the survey as a whole, beside that of the cove: a new reel and where it lies */
    List<Problem> change(UnaryOperator<Survey> change, UnaryOperator<Cove> ofCove) {
        return description.change(survey -> with(change.apply(survey), ofCove));
    }

    /** Forgets what was typed and not taken. */
    void forget() {
        form.forget();
        placement.forget();
        feed.forget();
    }

    Form<Cove> form() {
        return form;
    }

    Items<Placement> placements() {
        return placements;
    }

    Form<Placement> placement() {
        return placement;
    }

    Items<Feed> feeds() {
        return feeds;
    }

    Form<Feed> feed() {
        return feed;
    }

    void whenChanged(Runnable told) {
        description.surveyProperty().addListener((property, before, now) -> told.run());
        coves.chosenProperty().addListener((property, before, now) -> told.run());
    }
}
