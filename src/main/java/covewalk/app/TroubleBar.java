package covewalk.app;

import covewalk.app.desk.Desk;
import covewalk.app.desk.FolderText;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Says plainly what is not on disk, why, and what can be done; takes no room while all is well. */
final class TroubleBar extends VBox {

    private final Desk desk;
    private final Texts texts;
    private final Label says = new Label();
    private final Label answer = new Label();
    private final TextField otherPlace = new TextField();
    private final ToggleButton elsewhere = new ToggleButton();
    private final Button close;
    private final Button again;
    private final Button theirs;
    private final Button ours;
    /** Whether somebody wanted to close the window while something was not on disk. */
    private boolean asked;
    private final InvalidationListener follow = observable -> follow();

    TroubleBar(Desk desk, Texts texts) {
        super(8);
        this.desk = desk;
        this.texts = texts;
        getStyleClass().add("trouble");
        setId("trouble");
        says.setId("trouble-says");
        says.setWrapText(true);
        answer.setId("trouble-answer");
        answer.setWrapText(true);
        says.setAccessibleRole(AccessibleRole.TEXT);
        again = button("trouble-again", texts.get("trouble.again"), () -> desk.survey().tryAgain());
        theirs = button("trouble-theirs", texts.get("trouble.theirs"), () -> desk.survey().takeTheirs(why -> answer.setText(inWords(why))));
        ours = button("trouble-ours", texts.get("trouble.ours"), () -> desk.survey().keepOurs());
        otherPlace.setId("trouble-place");
        otherPlace.setPrefColumnCount(24);
        Label where = new Label(texts.get("trouble.place"));
        where.setLabelFor(otherPlace);
        Button keep = button("trouble-keep-there", texts.get("trouble.keep-there"), this::keepElsewhere);
        close = button("trouble-lose", texts.get("trouble.lose"), Platform::exit);
        elsewhere.setText(texts.get("trouble.elsewhere"));
        elsewhere.setId("trouble-elsewhere");
        FlowPane place = new FlowPane(8, 8, where, otherPlace, keep);
        place.visibleProperty().bind(elsewhere.selectedProperty());
        place.managedProperty().bind(place.visibleProperty());
        elsewhere.setOnAction(event -> otherPlace.requestFocus());
        getChildren().addAll(says, new FlowPane(8, 8, again, theirs, ours, elsewhere, close), place, answer);
        answer.managedProperty().bind(answer.textProperty().isNotEmpty());
        desk.surveyProperty().addListener((property, before, now) -> watch(before, now));
        watch(null, desk.survey());
    }

    /** Its words grow only as far as they leave most of the window to what one goes on with. */
    void fit(double textPx) {
        setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", textPx));
    }

    private static Button button(String id, String text, Runnable act) {
        Button button = new Button(text);
        button.setId(id);
        button.setOnAction(event -> act.run());
        return button;
    }

    private void watch(OpenSurvey before, OpenSurvey now) {
        if (before != null) {
            before.troubleProperty().removeListener(follow);
            before.theirsProperty().removeListener(follow);
            before.waiting().removeListener(follow);
        }
        if (now != null) {
            now.troubleProperty().addListener(follow);
            now.theirsProperty().addListener(follow);
            now.waiting().addListener(follow);
            otherPlace.setText(suggested(now).toString());
            elsewhere.setSelected(false);
        }
        follow();
    }

    /** Beside the user's own files, under the same name: a stick that was pulled is no place. */
    private static Path suggested(OpenSurvey survey) {
        return home().resolve("covewalk").resolve(survey.folder().getFileName() + "-kept");
    }

    private void follow() {
        OpenSurvey survey = desk.survey();
        boolean trouble = survey != null && !survey.troubleProperty().get().isEmpty();
        asked &= survey != null && survey.hasUnwritten();
        show(this, trouble || asked);
        boolean choice = trouble && survey.theirsProperty().get() != null && isChoice(survey.troubleProperty().get());
        show(again, !choice);
        show(theirs, choice);
        show(ours, choice);
        show(close, asked);
        answer.setText("");
        if (trouble || asked) {
            says.setText((inWords(survey.troubleProperty().get()) + " " + held(survey)).strip());
        }
    }

    /** A disk that went away is in the way of the choice too, which waits until it is back. */
    private static boolean isChoice(List<Problem> trouble) {
        return trouble.stream().anyMatch(problem -> problem.key().equals("folder.described-elsewhere"));
    }

    private static void show(Node node, boolean visible) {
        node.setVisible(visible);
        node.setManaged(visible);
    }

    /** A description is no reading, and is held as well. */
    private String held(OpenSurvey survey) {
        return survey.waiting().isEmpty() && survey.hasUnwritten() ? texts.get("trouble.described")
                : texts.count("trouble.held", survey.waiting().size());
    }

    private String inWords(List<Problem> problems) {
        return problems.stream().map(problem -> problem.key().startsWith("log.stopped.") && !problem.details().isEmpty()
                ? texts.get("trouble.disk", problem.firstDetail(texts.locale())) : problem.sentence(texts.locale()))
                .distinct().collect(Collectors.joining(" "));
    }

    private void keepElsewhere() {
        Optional<Path> there = FolderText.path(otherPlace.getText(), home());
        if (there.isEmpty()) {
            answer.setText(otherPlace.getText().isBlank() ? texts.get("trouble.no-place") : texts.get("trouble.no-path", otherPlace.getText()));
        } else {
            desk.keepElsewhere(there.get(), refused -> answer.setText(inWords(refused)));
        }
    }

    private static Path home() {
        return Path.of(System.getProperty("user.home"));
    }

    /** Whether nothing would be lost; else it is tried once more, and how to lose it all the same stays in sight. */
    boolean mayClose() {
        if (desk.survey() == null || !desk.survey().hasUnwritten()) {
            return true;
        }
        asked = true;
        follow();
        desk.survey().tryAgain();
        return false;
    }
}
