package covewalk.survey.file.meter;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's title without what titles differ in by chance: case, spaces, dots, brackets, the kind of prime, and the
 * unit, which is told apart. A single letter keeps its case, since x is a chromaticity and X a tristimulus value.
 *
 * @param name what is left, to be looked up
 * @param unit the unit in brackets or after a stroke, where it is one we know
 */
record HeaderName(String name, Optional<MeterUnit> unit) {

    /** Longer titles are no titles, and would only cost time. */
    private static final int LONGEST = 100;
    private static final Pattern PRIMES = Pattern.compile("[\u2018\u2019\u201b\u2032\u02b9\u02bc`\u00b4\uff07]");
    private static final Pattern BRACKETED = Pattern.compile("(.*\\S)\\s*[\\[({]([^\\[({]*)[\\])}]");
    private static final Pattern AFTER_STROKE = Pattern.compile("(.*?\\S)\\s*/\\s*(\\S+)");
    private static final Pattern CHANCE = Pattern.compile("[\\s_\\-.,:()\\[\\]{}*\"\u30fb]");

    static HeaderName of(String title) {
        if (title.length() > LONGEST) {
            return new HeaderName("", Optional.empty());
        }
        String text = Normalizer.normalize(PRIMES.matcher(title.strip()).replaceAll("'"), Normalizer.Form.NFKC);
        return split(BRACKETED, text).or(() -> split(AFTER_STROKE, text))
                .orElseGet(() -> new HeaderName(plain(text), Optional.empty()));
    }

    private static Optional<HeaderName> split(Pattern pattern, String text) {
        Matcher parts = pattern.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Optional<MeterUnit> unit = MeterUnit.of(parts.group(2));
        return unit.map(known -> new HeaderName(plain(parts.group(1)), Optional.of(known)));
    }

    private static String plain(String text) {
        String bare = CHANCE.matcher(text.replace('\u0394', '\u03b4').replace("\u03b4", "delta")).replaceAll("");
        return bare.length() == 1 ? bare : bare.toLowerCase(Locale.ROOT);
    }
}
