package covewalk.app.surveys;

import covewalk.app.desk.FolderText;
import covewalk.app.desk.Place;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Opens the survey in a folder that somebody types, pastes or picks; its description will do as well. */
final class OpenFolder {

    private final Opening opening;
    private final Path home;
    private final Texts texts;
    private final StringProperty folder = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    OpenFolder(Opening opening, Path home, Texts texts) {
        this.opening = opening;
        this.home = home;
        this.texts = texts;
    }

    StringProperty folderProperty() {
        return folder;
    }

    /** All that is wrong with the folder. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    void open() {
        Optional<Path> there = FolderText.path(folder.get(), home);
        if (there.isEmpty()) {
            trouble.set(folder.get().isBlank() ? texts.get("open.empty") : texts.get("folder.no-path", folder.get()));
        } else {
            open(there.get());
        }
    }

    void open(Path there) {
        boolean description = there.getFileName() != null && there.getFileName().toString().equals("survey.json");
        trouble.set("");
        opening.open(description ? there.getParent() : there, Place.SITE, this::tell);
    }

    /** @param refused all that is wrong with a folder; empty where nothing is */
    void tell(List<Problem> refused) {
        trouble.set(ProblemLines.of(refused, texts));
    }

    /** Where a window for choosing a folder begins. */
    Path nearest() {
        Path near = FolderText.path(folder.get(), home).orElse(home);
        while (near != null && !Files.isDirectory(near)) {
            near = near.getParent();
        }
        return near == null ? home : near;
    }
}
