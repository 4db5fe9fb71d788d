package covewalk.report.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a line of a PDF may end: where the language's rules allow it, but not inside a date, a fraction or the number of a
 * standard, and not between a figure and its unit. "2027-03-" at the end of a line is read as a month.
 */
final class LineBreaks implements FSTextBreaker {

    /** What stays on the line of the figure before it. */
    private static final Pattern BELONGS_TO_FIGURE = Pattern.compile("(\\d+/\\d+|(m|ft|in|K|%|W|V|mm|min|lx)(?![\\p{L}\\p{N}]))");

    private final BreakIterator places = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";
    private Matcher belongs = BELONGS_TO_FIGURE.matcher(text);

    @Override
    public void setText(String newText) {
        text = newText;
        belongs = BELONGS_TO_FIGURE.matcher(text);
        places.setText(text);
    }

    /** The next place, counted in characters from the beginning; the end of the text is the last but for {@link BreakIterator#DONE}. */
    @Override
    public int next() {
        int place = places.next();
        while (place != BreakIterator.DONE && place < text.length() && tears(place)) {
            place = places.next();
        }
        return place;
    }

    private boolean tears(int place) {
        char before = text.charAt(place - 1);
        if (!Character.isWhitespace(before)) {
            return Character.isDigit(text.charAt(place));
        }
        return place > 1 && Character.isDigit(text.charAt(place - 2)) && belongs.region(place, text.length()).lookingAt();
    }
}
