package covewalk.survey.label;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An application identifier of GS1: what an element is about, and how it is written (GS1 Barcode Syntax Dictionary; those
 * that a reel's label may carry, and the lengths of all that need no separator).
 *
 * @param ai its two to four digits
 * @param least how many characters its data has at least
 * @param most how many at most
 * @param digits whether they are digits only
 * @param fixed whether it ends by itself, without a separator
 */
record Identifier(String ai, int least, int most, boolean digits, boolean fixed) {

    /** Data lengths of the identifiers that need no separator, by their first two digits. */
    private static final Map<String, Integer> FIXED = fixedLengths();
    private static final Set<String> OF_TWO = Set.of("00", "01", "02", "03", "04", "10", "11", "12", "13", "14", "15", "16", "17",
            "18", "19", "20", "21", "22", "30", "37", "90", "91", "92", "93", "94", "95", "96", "97", "98", "99");
    private static final Set<String> OF_THREE = Set.of("23", "24", "25", "40", "41", "42", "71");
    private static final Set<String> OF_FOUR = Set.of("31", "32", "33", "34", "35", "36", "39", "43", "70", "72", "80", "81", "82");
    private static final Map<String, Integer> MOST = Map.ofEntries(Map.entry("10", 20), Map.entry("21", 20), Map.entry("22", 20),
            Map.entry("235", 28), Map.entry("240", 30), Map.entry("241", 30), Map.entry("242", 6), Map.entry("243", 20),
            Map.entry("250", 30), Map.entry("30", 8), Map.entry("37", 8), Map.entry("400", 30), Map.entry("8200", 70),
            Map.entry("90", 30));
    private static final Set<String> NUMBERS = Set.of("242", "30", "37");
    private static final int LONGEST = 90;

    private static Map<String, Integer> fixedLengths() {
        Map<String, Integer> lengths = new HashMap<>(Map.of("00", 18, "01", 14, "02", 14, "03", 14, "04", 16, "20", 2, "41", 13));
        List.of("11", "12", "13", "14", "15", "16", "17", "18", "19", "31", "32", "33", "34", "35", "36")
                .forEach(start -> lengths.put(start, 6));
        return Map.copyOf(lengths);
    }

    /** The one that a text begins with; empty where it begins with none. */
    static Optional<Identifier> at(String text) {
        if (text.length() < 2) {
            return Optional.empty();
        }
        String start = text.substring(0, 2);
        int length = OF_TWO.contains(start) ? 2 : OF_THREE.contains(start) ? 3 : OF_FOUR.contains(start) ? 4 : 0;
        boolean there = length > 0 && text.length() >= length && text.substring(0, length).chars().allMatch(c -> c >= '0' && c <= '9');
        return there ? Optional.of(of(text.substring(0, length))) : Optional.empty();
    }

    private static Identifier of(String ai) {
        Integer fixed = FIXED.get(ai.substring(0, 2));
        if (fixed != null) {
            return new Identifier(ai, fixed, fixed, true, true);
        }
        return new Identifier(ai, 1, MOST.getOrDefault(ai, LONGEST), NUMBERS.contains(ai), false);
    }

    boolean takes(String data) {
        return data.length() >= least && data.length() <= most && data.chars().allMatch(digits ? c -> c >= '0' && c <= '9' : Identifier::isPrinted);
    }

    /** The 82 characters that elements are made of. */
    private static boolean isPrinted(int c) {
        return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || "!\"%&'()*+,-./:;<=>?_".indexOf(c) >= 0;
    }
}
