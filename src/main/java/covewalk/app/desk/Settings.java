package covewalk.app.desk;

import covewalk.words.LengthUnit;
import java.util.Locale;

/**
 * What a person chose for this computer.
 *
 * @param textPercent size of texts and targets, 80 to 200
 * @param language of the screens
 * @param feet whether lengths lead with feet and inches
 * @param sound whether a kept reading is heard
 */
public record Settings(Theme theme, int textPercent, Locale language, boolean feet, boolean sound) {

    public static final int SMALLEST = 80;
    public static final int LARGEST = 200;

    public Settings {
        textPercent = Math.max(SMALLEST, Math.min(LARGEST, textPercent));
    }

    /** Dark, since sites are; in the machine's language, where the app speaks it. */
    public static Settings usual() {
        boolean german = Locale.getDefault().getLanguage().equals(Locale.GERMAN.getLanguage());
        return new Settings(Theme.DARK, 100, german ? Locale.GERMAN : Locale.ENGLISH, false, true);
    }

    /** In which unit lengths are said first. */
    public LengthUnit lengths() {
        return feet ? LengthUnit.FT : LengthUnit.M;
    }

    public Settings with(Theme other) {
        return new Settings(other, textPercent, language, feet, sound);
    }

    public Settings withTextPercent(int percent) {
        return new Settings(theme, percent, language, feet, sound);
    }

    public Settings with(Locale other) {
        return new Settings(theme, textPercent, other, feet, sound);
    }

    public Settings withFeet(boolean first) {
        return new Settings(theme, textPercent, language, first, sound);
    }

    public Settings withSound(boolean heard) {
        return new Settings(theme, textPercent, language, feet, heard);
    }
}
