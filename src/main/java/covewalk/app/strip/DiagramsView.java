package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The cove that is looked at in the u', v' diagram, and as steps against position. */
public final class DiagramsView extends ScrollPane {

    private static final double MM_PER_EM = 3.25;
    /** The diagram's texts are smaller than the strip's, so that it stands larger. */
    private static final double DIAGRAM_PIXELS_PER_MM = 6.5;
    private static final double BAR_PX = 20;

    private final Label none = new Label();

    public DiagramsView(Desk desk) {
        Texts texts = desk.texts(DiagramsView.class);
        DiagramsModel model = new DiagramsModel(desk);
        none.setWrapText(true);
        none.textProperty().bind(model.noneProperty());
        none.managedProperty().bind(none.textProperty().isNotEmpty());
        PicturePane colours = new PicturePane(DIAGRAM_PIXELS_PER_MM);
        colours.setId("diagrams-colours");
        colours.pictureProperty().bind(model.coloursProperty());
        PicturePane profile = new PicturePane();
        profile.setId("diagrams-profile");
        profile.pictureProperty().bind(model.profileProperty());
        Label band = new Label(texts.get("diagrams.band"));
        band.setWrapText(true);
        band.getStyleClass().add("small");
        band.visibleProperty().bind(model.profileProperty().isNotNull());
        setContent(new VBox(8, none, colours, profile, band));
        widthProperty().addListener((property, before, now) -> model.widthMm((now.doubleValue() - BAR_PX) / pixelsPerMm()));
        sceneProperty().addListener((property, before, now) -> model.seen(now != null));
        setFitToWidth(true);
        getStyleClass().add("plain-scroll");
        setId("diagrams");
    }

    private double pixelsPerMm() {
        return none.getFont().getSize() / MM_PER_EM;
    }
}
