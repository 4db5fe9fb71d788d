package covewalk.survey.file.log;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The columns of a reading log, in the order in which a new log has them. */
public enum LogColumn {
    READING, COVE, POSITION_M, ROLE, SETUP, ROUND, CCT_K, DUV, X, Y, U_PRIME, V_PRIME, LUX, TAKEN_AT, REPLACES, NOTE;

    /** The name in the header. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The column of this name, whatever its case. */
    static Optional<LogColumn> of(String name) {
        String code = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(column -> column.code().equals(code)).findFirst();
    }
}
