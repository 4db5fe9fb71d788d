package covewalk.words;

/** Texts cut to the room there is. */
public final class Shortened {

    private Shortened() {
    }

    /** At most {@code most} characters, the last one an ellipsis where something was cut; no surrogate pair is torn. */
    public static String of(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
    }
}
