package covewalk.app.forms;

import java.util.List;

/**
 * One thing that a form asks for.
 *
 * @param name as in a survey file, such as {@code lengthM}
 * @param choices the words of the file that can be chosen from; empty where it is typed
 */
public record Ask(String name, List<String> choices) {

    private static final List<String> YES_OR_NO = List.of("false", "true");

    public Ask {
        choices = List.copyOf(choices);
    }

    public static Ask typed(String name) {
        return new Ask(name, List.of());
    }

    public static Ask oneOf(String name, String... choices) {
        return new Ask(name, List.of(choices));
    }

    public static Ask yesOrNo(String name) {
        return new Ask(name, YES_OR_NO);
    }

    boolean isYesOrNo() {
        return choices.equals(YES_OR_NO);
    }
}
