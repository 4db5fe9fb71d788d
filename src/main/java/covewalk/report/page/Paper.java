package covewalk.report.page;

import java.util.Locale;

/** The sheets that a report is laid out for. */
public enum Paper {
    /** 210 by 297 mm (ISO 216). */
    A4,
    /** 8.5 by 11 inches. */
    LETTER;

    /** As a style sheet and a command line call it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
