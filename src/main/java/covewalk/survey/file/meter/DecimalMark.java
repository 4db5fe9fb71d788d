package covewalk.survey.file.meter;

import java.util.List;
import java.util.regex.Pattern;

/** Which mark a file's numbers have before their decimals, as far as the file itself shows. */
enum DecimalMark {
    POINT('.', ','),
    COMMA(',', '.'),
    /** Neither mark is proved, or both are. */
    UNKNOWN(' ', ' ');

    /** A number that starts with a lone nought has decimals behind its mark, whatever the country. */
    private static final Pattern PROOF = Pattern.compile("[-+\u2212]?0?([.,])\\d+([eE][-+]?\\d+)?");

    private final char mark;
    private final char group;

    DecimalMark(char mark, char group) {
        this.mark = mark;
        this.group = group;
    }

    /** From all cells of all number columns: the file as a whole decides. */
    static DecimalMark of(List<String> cells) {
        boolean point = shown(cells, '.');
        boolean comma = shown(cells, ',');
        if (point == comma) {
            return UNKNOWN;
        }
        return point ? POINT : COMMA;
    }

    private static boolean shown(List<String> cells, char mark) {
        return cells.stream().anyMatch(cell -> cell.indexOf(mark) >= 0 && PROOF.matcher(cell).matches());
    }

    char mark() {
        return mark;
    }

    /** The mark that then sets thousands apart. */
    char group() {
        return group;
    }
}
