package covewalk.app.site;

import covewalk.app.forms.Items;
import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.ReelFinder.Found;
import covewalk.app.forms.Refusals;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One box for a scanner: a label that the survey knows is looked up, any other becomes a new reel. */
final class AddReel {

    private final Items<Reel> reels;
    private final Supplier<ReelFinder> finder;
    private final Texts texts;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");

    AddReel(Items<Reel> reels, Supplier<ReelFinder> finder, Texts texts) {
        this.reels = reels;
        this.finder = finder;
        this.texts = texts;
    }

    StringProperty textProperty() {
        return text;
    }

    /** What came of it. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    void enter() {
        Found found = finder.get().find(text.get());
        List<Problem> problems = found.isNew() ? reels.add(found.reel()) : List.of();
        if (!problems.isEmpty()) {
            says.set(new Refusals(texts).sentences(problems));
            return;
        }
        reels.choose(reels.items().indexOf(found.reel()));
        String doubts = found.doubts().stream().map(doubt -> texts.get("doubt." + doubt.code())).collect(Collectors.joining(" "));
        says.set((texts.get(found.isNew() ? "reel.added" : "reel.known", found.reel().id()) + " " + doubts).strip());
        text.set("");
    }
}
