package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.survey.Problem;
import covewalk.survey.Survey;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** Opens a survey and goes on from there, once it is open. */
final class Opening {

    private final Desk desk;
    private Path asked;
    private Place then;

    Opening(Desk desk) {
        this.desk = desk;
        desk.surveyProperty().addListener((property, before, now) -> {
            if (now != null && now.folder().equals(asked)) {
                goOn();
            }
        });
    }

    /** @param refused all that is wrong with the folder */
    void open(Path folder, Place next, Consumer<List<Problem>> refused) {
        asked = folder;
        then = next;
        if (desk.survey() != null && desk.survey().folder().equals(folder)) {
            goOn();
        } else {
            desk.open(folder, refused);
        }
    }

    void create(Path folder, Survey described, Place next, Consumer<List<Problem>> refused) {
        asked = folder;
        then = next;
        desk.create(folder, described, List.of(), refused);
    }

    private void goOn() {
        asked = null;
        Place next = then;
        desk.workers().screen().execute(() -> desk.go(next)); // once all places know the survey
    }
}
