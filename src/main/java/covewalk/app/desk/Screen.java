package covewalk.app.desk;

import javafx.scene.Parent;

/** What stands at a place. */
public interface Screen {

    Place place();

    Parent view();

    /** Each time somebody comes here: put the focus where the next thing is typed. */
    default void shown() {
    }
}
