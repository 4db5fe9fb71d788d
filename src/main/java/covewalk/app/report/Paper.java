package covewalk.app.report;

import java.util.Locale;

/** The sheets that a report can be laid out for. */
enum Paper {
    A4, LETTER;

    /** The word in texts. */
    String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
