package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.FolderText;
import covewalk.app.desk.Place;
import covewalk.app.text.Texts;
import covewalk.colour.StepRule;
import covewalk.survey.Limits;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
import covewalk.survey.Survey;
import covewalk.survey.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Begins a survey: the site's name is all that is asked for; where it is to lie is proposed. */
final class NewSurvey {

    /** Two steps, chosen by the inspector until somebody names a clause (common practice, no source). */
    private static final Limits FIRST =
            new Limits(2, OptionalDouble.empty(), "", StepRule.UV_CIRCLE, Limits.USUAL_ERROR_RATE, Limits.ErrorPer.JOINT);

    private final Desk desk;
    private final Opening opening;
    private final Path home;
    private final Texts texts;
    private final StringProperty site = new SimpleStringProperty("");
    private final StringProperty folder = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private String proposed = "";

    /** @param home the user's own folder */
    NewSurvey(Desk desk, Opening opening, Path home, Texts texts) {
        this.desk = desk;
        this.opening = opening;
        this.home = home;
        this.texts = texts;
        site.addListener((property, before, now) -> propose());
        propose();
    }

    StringProperty siteProperty() {
        return site;
    }

    StringProperty folderProperty() {
        return folder;
    }

    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** Follows the site's name, until somebody types another folder. */
    private void propose() {
        if (folder.get().equals(proposed)) {
            String name = FolderText.name(site.get());
            proposed = home.resolve("covewalk").resolve(today() + (name.isEmpty() ? "" : "-" + name)).toString();
            folder.set(proposed);
        }
    }

    private LocalDate today() {
        return LocalDate.now(desk.clock());
    }

    void begin() {
        Optional<Path> there = FolderText.path(folder.get(), home);
        if (site.get().isBlank()) {
            trouble.set(texts.get("new.no-name"));
        } else if (there.isEmpty()) {
            trouble.set(texts.get("folder.no-path", folder.get()));
        } else {
            trouble.set("");
            opening.create(there.get(), described(), Place.SITE, refused -> trouble.set(ProblemLines.of(refused, texts)));
        }
    }

    private Survey described() {
        return new Survey(new Site(site.get().strip(), ""),
                new Visit(Optional.of(today()), "", Optional.empty(), OptionalInt.empty(), ""), List.of(SetUp.ASSUMED), FIRST,
                List.of(), List.of(), Optional.empty());
    }
}
