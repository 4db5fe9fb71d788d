package covewalk.survey.label;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/**
 * A date in six digits, year, month and day. Day 00 means no day in particular. The year is the one of its two digits that
 * lies within 49 years before and 50 after this one (GS1 General Specifications, determination of century).
 *
 * @param month of that year
 * @param day 1 to 31; 0 where the label names none
 */
record CodeDate(YearMonth month, int day) {

    private static final int BEFORE = 49;

    static Optional<CodeDate> of(String digits, int thisYear) {
        if (digits.length() != 6 || !digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return Optional.empty();
        }
        int first = thisYear - BEFORE;
        int year = first + Math.floorMod(Integer.parseInt(digits.substring(0, 2)) - first, 100);
        try {
            CodeDate date = new CodeDate(YearMonth.of(year, Integer.parseInt(digits.substring(2, 4))), Integer.parseInt(digits.substring(4)));
            date.lastDay();
            return Optional.of(date);
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    /** The day; the last one of the month where the label names none. */
    LocalDate lastDay() {
        return day == 0 ? month.atEndOfMonth() : month.atDay(day);
    }

    /** As a survey keeps it: no finer than the label. */
    String text() {
        return day == 0 ? month.toString() : lastDay().toString();
    }
}
