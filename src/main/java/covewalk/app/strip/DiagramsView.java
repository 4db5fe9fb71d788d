package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The cove that is looked at in the u', v' diagram, and as steps against position. */
public final class DiagramsView extends ScrollPane {

    private final DiagramsModel model;

    public DiagramsView(Desk desk) {
        Texts texts = desk.texts(DiagramsView.class);
        model = new DiagramsModel(desk);
        PicturePane profile = new PicturePane();
        profile.setId("diagrams-profile");
        profile.pictureProperty().bind(model.profileProperty());
        Label none = new Label();
        none.setWrapText(true);
        none.textProperty().bind(model.noneProperty());
        none.managedProperty().bind(none.textProperty().isNotEmpty());
        setContent(new VBox(12, none, profile));
        setFitToWidth(true);
        getStyleClass().add("plain-scroll");
        setId("diagrams");
    }
}
