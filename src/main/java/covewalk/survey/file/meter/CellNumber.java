package covewalk.survey.file.meter;

import covewalk.survey.Typed;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a cell as a number with its digits as typed, in a file whose decimal mark is known or not. */
final class CellNumber {

    /** Blanks between digits, narrow and no-break ones too, and the Swiss apostrophe. */
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d)[\\s\u00a0\u2009\u202f'\u2019](?=\\d{3}(?!\\d))");
    private static final Pattern WITH_UNIT = Pattern.compile("([-+\u2212]?[\\d.,]+(?:[eE][-+]?\\d+)?)[\\s\u00a0\u202f]*(\\D*)");
    private static final Pattern GROUPS = Pattern.compile("[-+\u2212]?\\d{1,3}(?:[.,]\\d{3})+(?:[.,]\\d+)?");

    private static final int LONGEST = 60;

    /** What meters write in the place of a number, in small letters (common practice, no source). */
    private static final Set<String> MARKS = Set.of("over", "under", "n/a", "na", "n.a.", "ol", "o.l.", "ovr", "unr", "nan",
            "err", "error", "e", "low", "high", "out of range", "over range", "under range", "inf", "+inf", "-inf", "null", "none");
    private static final Pattern STROKES = Pattern.compile("[-\u2013\u2014\u2212_*#.?/]+");

    private CellNumber() {
    }

    /** Whether the meter says here that it has no value. */
    static boolean isMark(String cell) {
        String plain = cell.strip().toLowerCase(Locale.ROOT);
        return MARKS.contains(plain) || STROKES.matcher(plain).matches() || plain.startsWith("<") || plain.startsWith(">");
    }

    /**
     * The number, its digits with a point as decimal mark; empty where the cell is none, or can be read in two ways.
     *
     * @param unit the unit the column is in; a cell may repeat it, and no other
     */
    static Optional<Typed> read(String cell, DecimalMark mark, MeterUnit unit) {
        if (cell.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher parts = WITH_UNIT.matcher(THOUSANDS.matcher(cell.strip()).replaceAll(""));
        if (!parts.matches() || !agrees(parts.group(2).strip(), unit)) {
            return Optional.empty();
        }
        return plain(parts.group(1), mark).flatMap(Typed::of);
    }

    private static boolean agrees(String written, MeterUnit unit) {
        return written.isEmpty() || MeterUnit.of(written).filter(unit::equals).isPresent();
    }

    /** Takes thousands marks out where the file shows which mark is which. */
    private static Optional<String> plain(String digits, DecimalMark mark) {
        boolean grouped = GROUPS.matcher(digits).matches();
        if (mark == DecimalMark.UNKNOWN) {
            boolean nought = digits.matches("[-+\u2212]?0[.,].*");
            return grouped && !nought ? Optional.empty() : Optional.of(digits);
        }
        if (digits.indexOf(mark.group()) < 0) {
            return Optional.of(digits);
        }
        boolean sound = grouped && digits.lastIndexOf(mark.group()) < decimalsFrom(digits, mark);
        return sound ? Optional.of(digits.replace(String.valueOf(mark.group()), "")) : Optional.empty();
    }

    private static int decimalsFrom(String digits, DecimalMark mark) {
        int at = digits.indexOf(mark.mark());
        return at < 0 ? digits.length() : at;
    }
}
