package covewalk.survey.file.disk;

/** Texts for tables that people open in a spreadsheet, which would run some of them as formulas. */
public final class SpreadsheetCell {

    /** What starts a formula, the wide forms of East Asian keyboards among them; tab and line ends lead up to one. */
    private static final String STARTS_A_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private SpreadsheetCell() {
    }

    /** The same text, with an apostrophe in front where a spreadsheet would run it (OWASP, CSV injection). */
    public static String harmless(String text) {
        String start = text.stripLeading();
        boolean formula = !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0
                || !start.isEmpty() && STARTS_A_FORMULA.indexOf(start.charAt(0)) >= 0;
        return formula ? "'" + text : text;
    }

    /** The text as it was before {@link #harmless}. */
    public static String plain(String cell) {
        boolean guarded = cell.startsWith("'") && !harmless(cell.substring(1)).equals(cell.substring(1));
        return guarded ? cell.substring(1) : cell;
    }
}
