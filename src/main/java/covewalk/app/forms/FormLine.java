package covewalk.app.forms;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One line of a form: what is typed in it, and what is to be said of it. */
public final class FormLine {

    private final Ask ask;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
    private String shown = "";

    FormLine(Ask ask) {
        this.ask = ask;
    }

    public Ask ask() {
        return ask;
    }

    public StringProperty textProperty() {
        return text;
    }

    /** Why what is typed was not taken; empty where it was. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** What looks wrong although it was taken. */
    public ReadOnlyStringProperty remarkProperty() {
        return remark.getReadOnlyProperty();
    }

    boolean isAsShown() {
        return text.get().strip().equals(shown);
    }

    /** What stands in the survey now; something typed that was not taken yet stays. */
    void show(String now) {
        boolean untouched = isAsShown();
        shown = now.strip();
        if (untouched) {
            showAgain();
        }
    }

    /** Forgets what is typed, and shows what stands in the survey. */
    void showAgain() {
        trouble.set("");
        text.set(shown);
    }

    void refuse(String why) {
        trouble.set(why);
    }

    void remark(String what) {
        remark.set(what);
    }
}
