package covewalk.survey;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Why a visit is made. */
public enum Purpose {
    COMMISSIONING, COMPLAINT, WARRANTY, REVISIT;

    /** The word in a survey file. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Purpose> of(String code) {
        return Arrays.stream(values()).filter(purpose -> purpose.code().equals(code)).findFirst();
    }
}
