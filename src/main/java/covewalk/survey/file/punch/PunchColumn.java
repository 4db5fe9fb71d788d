package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import covewalk.survey.Typed;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The columns of {@code punch.csv}, in the order in which a new one has them. */
public enum PunchColumn {
    /** The item's number, from 1; never used for two faults. */
    ITEM,
    /** The clause or drawing it goes against. */
    CLAUSE,
    /** Who puts it right. */
    RESPONSIBLE,
    /** By when: a date. */
    DUE,
    /** When it was put right: a date, and who if somebody said so. */
    DONE,
    /** When it was looked at or read again: a date, and who if somebody said so. */
    REINSPECTED,
    /** A date and the initials of whoever accepted it. */
    ACCEPTED,
    NOTE,
    /** The next four say together which fault the number stands for. */
    COVE, KIND, POSITION_M, REELS;

    /** What empties a cell that an earlier row filled; an empty cell leaves it as it was. */
    public static final String CLEARED = "-";

    /** What people fill in, in order. */
    public static final List<PunchColumn> STATE = List.of(CLAUSE, RESPONSIBLE, DUE, DONE, REINSPECTED, ACCEPTED, NOTE);

    /** Which fault the number stands for. */
    static final List<PunchColumn> PLACE = List.of(COVE, KIND, POSITION_M, REELS);

    private static final Set<PunchColumn> DAYS = Set.of(DUE, DONE, REINSPECTED, ACCEPTED);

    private static final int LONGEST = 2000;
    private static final int DATE = "2026-12-01".length();

    /** The name in the header, in JSON and on the command line. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The column of this name, whatever its case. */
    static Optional<PunchColumn> of(String name) {
        String code = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(column -> column.code().equals(code)).findFirst();
    }

    /** What is wrong with a text for this column, and what to write instead; empty where it can stand there. */
    public Optional<Problem> check(String text) {
        if (text.isEmpty() || STATE.contains(this) && text.equals(CLEARED)) {
            return Optional.empty();
        }
        if (text.length() > LONGEST) {
            return wrong(Problem.refusal("punch.cell.long", text.length(), LONGEST));
        }
        if (DAYS.contains(this) && isNoDay(text)) {
            return wrong(Problem.refusal("punch.cell.no-such-day", text.substring(0, DATE)));
        }
        return switch (this) {
            case DUE -> isDate(text) ? Optional.empty() : wrong(Problem.refusal("punch.cell.date", text));
            case DONE, REINSPECTED -> beginsWithDate(text) ? Optional.empty() : wrong(Problem.refusal("punch.cell.date-who", text));
            case ACCEPTED -> beginsWithDate(text) && text.length() > DATE ? Optional.empty()
                    : wrong(Problem.refusal("punch.cell.accepted", text));
            case POSITION_M -> Typed.of(text).isPresent() ? Optional.empty() : wrong(Problem.refusal("log.cell.number", text));
            default -> Optional.empty();
        };
    }

    private Optional<Problem> wrong(Problem problem) {
        return Optional.of(problem.inColumn(code()));
    }

    private static boolean beginsWithDate(String text) {
        return isDate(text) || text.length() > DATE + 1 && text.charAt(DATE) == ' ' && isDate(text.substring(0, DATE))
                && !text.substring(DATE).isBlank();
    }

    /** Written as a date is, and in no calendar. */
    private static boolean isNoDay(String text) {
        return text.matches("(?s)[0-9]{4}-[0-9]{2}-[0-9]{2}( .*)?") && !isDate(text.substring(0, DATE));
    }

    private static boolean isDate(String text) {
        try {
            return text.length() == DATE && LocalDate.parse(text).getYear() > 0;
        } catch (DateTimeException noDate) {
            return false;
        }
    }
}
