package covewalk.app.walk;

import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A column that scrolls where it is higher than its room, and then keeps what is typed into, and what is asked about it, in sight. */
final class InSight extends ScrollPane {

    private final VBox column;
    private Node from;
    private Node to;

    InSight(Region first) {
        column = new VBox(first);
        column.setMinWidth(0);
        setContent(column);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setMinSize(0, 0);
        viewportBoundsProperty().addListener((property, before, now) -> soon());
        column.heightProperty().addListener((property, before, now) -> soon());
    }

    /** What is kept in sight: all from the first to the second of these, and the first where there is no room for both. */
    void keep(Node first, Node last) {
        from = first;
        to = last;
    }

    /** What scrolls too, below. What is typed into stays where it is, and with it the focus. */
    void scrollWith(List<? extends Node> below) {
        column.getChildren().remove(1, column.getChildren().size());
        column.getChildren().addAll(below);
    }

    private void soon() {
        Platform.runLater(this::look); // once it is laid out
    }

    /** Scrolls as little as is needed. */
    void look() {
        double hidden = column.getHeight() - getViewportBounds().getHeight();
        if (hidden <= 0 || from == null || from.getScene() == null || !from.isManaged()) {
            return;
        }
        double top = within(from).getMinY();
        double bottom = (to.isManaged() ? within(to) : within(from)).getMaxY();
        double at = getVvalue() * hidden;
        double lowest = Math.min(top, bottom - getViewportBounds().getHeight());
        setVvalue(Math.max(0, Math.min(1, Math.max(lowest, Math.min(at, top)) / hidden)));
    }

    private Bounds within(Node node) {
        return column.sceneToLocal(node.localToScene(node.getLayoutBounds()));
    }
}
