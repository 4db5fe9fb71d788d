package covewalk.survey.label;

import java.util.Locale;

/** What is odd about a code that can be read all the same: somebody on a ladder decides, with the label before them. */
public enum Doubt {
    /** The GTIN's last digit is not the one that the others ask for. */
    CHECK_DIGIT,
    /** A lot or a serial without the GTIN that it belongs to. */
    NO_GTIN,
    /** The date made is no day there is. */
    DATE,
    /** It says two different things of one kind. */
    TWICE,
    /** A long lot at the end, in which the scanner may have left out a separator. */
    RUN_TOGETHER;

    /** The word in texts. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
