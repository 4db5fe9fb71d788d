package covewalk.survey;

import java.util.List;

/** Puts details into the slots {0}, {1} and so on of a sentence. */
public final class Slots {

    private Slots() {
    }

    /** What the details say is never read as a pattern itself: a cove may well be called "{0}". */
    public static String fill(String pattern, List<String> details) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pattern.length(); i++) {
            if (isSlot(pattern, i)) {
                text.append(details.get(pattern.charAt(i + 1) - '0'));
                i += 2;
            } else {
                text.append(pattern.charAt(i));
            }
        }
        return text.toString();
    }

    private static boolean isSlot(String pattern, int i) {
        return pattern.charAt(i) == '{' && i + 2 < pattern.length() && pattern.charAt(i + 2) == '}'
                && pattern.charAt(i + 1) >= '0' && pattern.charAt(i + 1) <= '9';
    }
}
