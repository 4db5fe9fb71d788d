package covewalk.survey.file.punch;

import java.util.Locale;

/** How far an item has come. */
public enum PunchStage {
    OPEN, DONE, REINSPECTED, ACCEPTED;

    /** The word in files and in the bundle of sentences. */
    public String code() {
        return this == REINSPECTED ? "re-inspected" : name().toLowerCase(Locale.ROOT);
    }
}
