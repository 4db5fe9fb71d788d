package covewalk.survey.file.meter;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which of a date's three numbers is the day, decided from all dates of a file together. */
enum DateOrder {
    DAY_FIRST,
    MONTH_FIRST,
    /** No date of the file tells, or two of them contradict each other. */
    UNDECIDED;

    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})([-/.]|\u5e74)(\\d{1,2})([-/.]|\u6708)(\\d{1,2})\u65e5?");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4}|\\d{2})");
    private static final int MONTHS = 12;

    static DateOrder of(List<String> dates) {
        boolean day = false;
        boolean month = false;
        for (String date : dates) {
            Matcher parts = YEAR_LAST.matcher(date);
            boolean strokes = parts.matches() && !parts.group(2).equals(".");
            day |= strokes && Integer.parseInt(parts.group(1)) > MONTHS;
            month |= strokes && Integer.parseInt(parts.group(3)) > MONTHS;
        }
        if (day == month) {
            return UNDECIDED;
        }
        return day ? DAY_FIRST : MONTH_FIRST;
    }

    /** The day meant, or empty where it is none or cannot be told. Points between the numbers mean day first. */
    Optional<LocalDate> read(String date) {
        Matcher year = YEAR_FIRST.matcher(date);
        if (year.matches()) {
            return day(year.group(1), year.group(3), year.group(5));
        }
        Matcher last = YEAR_LAST.matcher(date);
        if (!last.matches()) {
            return Optional.empty();
        }
        boolean points = last.group(2).equals(".");
        if (points || this == DAY_FIRST) {
            return day(last.group(4), last.group(3), last.group(1));
        }
        return this == MONTH_FIRST ? day(last.group(4), last.group(1), last.group(3)) : Optional.empty();
    }

    private static Optional<LocalDate> day(String year, String month, String day) {
        int full = Integer.parseInt(year) + (year.length() == 2 ? 2000 : 0);
        try {
            return Optional.of(LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
