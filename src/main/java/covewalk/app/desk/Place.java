package covewalk.app.desk;

import java.util.Locale;

/** The places to go, in the order of the job. */
public enum Place {
    SURVEYS, SITE, WALK, FAULTS, REELS, REPORT;

    /** The word in texts and settings. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether there is something to see there without a survey. */
    public boolean needsSurvey() {
        return this != SURVEYS;
    }
}
