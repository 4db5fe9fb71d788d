package covewalk.survey;

import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The sentences for problems, from {@code problems.properties} beside this class. */
final class ProblemWords {

    private static final ResourceBundle.Control NO_DETOUR =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    /** A figure with its unit, or a Duv; what somebody typed stands in quotation marks or alone, and stays as it was typed. */
    private static final String SLOT_OF_A_FIGURE = "\\{%1$d\\} (m|%%|steps?|Schritten?|Schritte)(?!\\p{L})|\\bDuv \\{%1$d\\}";

    private static final Pattern FRACTION = Pattern.compile("-?\\d+\\.\\d+");

    private final Locale locale;
    private final ResourceBundle words;
    private final char decimalMark;

    private ProblemWords(Locale locale) {
        this.locale = locale;
        words = ResourceBundle.getBundle("covewalk.survey.problems", locale, NO_DETOUR);
        decimalMark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }

    static String sentence(Problem problem, Locale locale) {
        return new ProblemWords(locale).sentence(problem);
    }

    static String firstDetail(Problem problem, Locale locale) {
        ProblemWords in = new ProblemWords(locale);
        return in.detail(in.words.getString(problem.key()), 0, problem.details().get(0));
    }

    private String sentence(Problem problem) {
        String pattern = words.getString(problem.key());
        List<String> details = problem.details();
        Stream<String> filled = IntStream.range(0, details.size()).mapToObj(i -> detail(pattern, i, details.get(i)));
        return Slots.fill(pattern, Stream.concat(filled, problem.cause().stream().map(cause -> cause.inFull(locale))).toList());
    }

    private String detail(String pattern, int slot, String detail) {
        if (detail.startsWith(Problem.DISK) && words.containsKey(detail)) {
            return words.getString(detail);
        }
        boolean figure = FRACTION.matcher(detail).matches()
                && Pattern.compile(String.format(Locale.ROOT, SLOT_OF_A_FIGURE, slot)).matcher(pattern).find();
        return figure ? detail.replace('.', decimalMark) : detail;
    }
}
