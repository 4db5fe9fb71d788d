package covewalk.app.forms;

import covewalk.app.desk.Settings;
import covewalk.app.text.Texts;
import covewalk.survey.Lengths;
import covewalk.survey.StatedColour;
import covewalk.survey.Typed;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How numbers, lengths and days stand in a form, and how they are read there: in the language chosen, in m or ft. */
public final class Writing {

    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.\\s?(\\d{1,2})\\.\\s?(\\d{4})");
    private static final Pattern NO_UNIT = Pattern.compile("[\\d.,\\s]+");
    private static final int MILLIMETRES = 3;
    private static final int DECIMALS = 6;

    private final Texts texts;
    private final boolean feet;

    public Writing(Texts texts, Settings settings) {
        this.texts = texts;
        this.feet = settings.feet();
    }

    /** Whether lengths lead with feet and inches. */
    public boolean feet() {
        return feet;
    }

    public String number(double value) {
        return texts.numbers().plain(value, DECIMALS);
    }

    public String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    public String number(OptionalInt value) {
        return value.isPresent() ? Integer.toString(value.getAsInt()) : "";
    }

    /** As in "5 m", or to the nearest quarter inch. */
    public String length(double m) {
        return feet ? texts.numbers().feetInches(m) : texts.numbers().plain(m, MILLIMETRES) + " m";
    }

    public String length(OptionalDouble m) {
        return m.isPresent() ? length(m.getAsDouble()) : "";
    }

    /** A length in any unit; a number without one is in the unit that was chosen for the screens. */
    public Optional<Typed> metres(String text) {
        boolean bare = feet && NO_UNIT.matcher(text.strip()).matches();
        return Lengths.metres(bare ? text.strip() + " ft" : text);
    }

    /** A step that a finger can set: 5 cm, or an inch. */
    public double roughly(double m) {
        double step = feet ? 0.0254 : 0.05;
        double steps = Math.rint(m / step);
        return feet ? steps * step : steps / 20;
    }

    public String date(Optional<LocalDate> day) {
        boolean german = texts.locale().getLanguage().equals(Locale.GERMAN.getLanguage());
        return day.map(date -> german ? String.format(Locale.ROOT, "%02d.%02d.%d", date.getDayOfMonth(), date.getMonthValue(),
                date.getYear()) : date.toString()).orElse("");
    }

    /** As it is read: with its CCT and Duv, or with x and y. */
    public String colour(Optional<StatedColour> colour) {
        return ColourText.of(colour, this);
    }

    /** Year first with hyphens, or day first with points: all other ways are read in two ways. */
    static Optional<LocalDate> dateOf(String text) {
        Matcher year = YEAR_FIRST.matcher(text);
        Matcher day = DAY_FIRST.matcher(text);
        try {
            if (year.matches()) {
                return Optional.of(LocalDate.of(number(year, 1), number(year, 2), number(year, 3)));
            }
            return day.matches() ? Optional.of(LocalDate.of(number(day, 3), number(day, 2), number(day, 1))) : Optional.empty();
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
