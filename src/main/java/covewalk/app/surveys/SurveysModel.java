package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** All that can be done about surveys as a whole. */
final class SurveysModel {

    private final Desk desk;
    private final Texts texts;
    private final Demonstration demonstration;
    private final RecentSurveys recent;
    private final NewSurvey fresh;
    private final OpenFolder open;
    private final ImportMeter meter;
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    /** @param home the user's own folder */
    SurveysModel(Desk desk, Path home) {
        this.desk = desk;
        texts = desk.texts(SurveysModel.class);
        Opening opening = new Opening(desk);
        demonstration = new Demonstration(home.resolve("covewalk"));
        recent = new RecentSurveys(desk, texts);
        fresh = new NewSurvey(desk, opening, home, texts);
        open = new OpenFolder(opening, home, texts);
        desk.refusedProperty().addListener((property, before, now) -> open.tell(now));
        open.tell(desk.refusedProperty().get());
        meter = new ImportMeter(desk, home, texts);
    }

    Desk desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    RecentSurveys recent() {
        return recent;
    }

    NewSurvey fresh() {
        return fresh;
    }

    OpenFolder open() {
        return open;
    }

    ImportMeter meter() {
        return meter;
    }

    /** Why the demonstration could not be copied. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    void openDemonstration() {
        trouble.set("");
        desk.workers().disk().execute(() -> {
            try {
                Path copy = demonstration.copy();
                desk.workers().screen().execute(() -> open.open(copy));
            } catch (IOException failed) {
                Problem why = Problem.refusal("folder.failed", DiskWords.reason(failed));
                desk.workers().screen().execute(() -> trouble.set(ProblemLines.of(List.of(why), texts)));
            }
        });
    }

    /** Each time somebody comes here. */
    void shown() {
        recent.look();
        meter.follow();
    }
}
