package covewalk.survey.file.disk;

/** What can be wrong with a row as text, before anybody asks what it means. */
public enum Damage {
    /** A quotation mark in the middle of a cell that does not begin with one. */
    STRAY_QUOTE("log.row.stray-quote"),
    /** Something other than a comma after a closing quotation mark. */
    AFTER_QUOTE("log.row.after-quote"),
    /** A quotation mark that is never closed: nobody can tell where the row ends. */
    OPEN_QUOTE("log.row.open-quote"),
    /** A character that no text holds, mostly zeros after a power cut. */
    CONTROL("log.row.control"),
    /** Longer than any row is. */
    TOO_LONG("log.row.too-long"),
    /** Bytes that are no UTF-8. */
    NOT_UTF8("log.row.not-utf8");

    private final String key;

    Damage(String key) {
        this.key = key;
    }

    /** Its sentence in the bundle. */
    public String key() {
        return key;
    }
}
