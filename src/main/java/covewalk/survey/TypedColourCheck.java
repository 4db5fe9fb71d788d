package covewalk.survey;

import java.util.List;

public final class TypedColourCheck {

    private TypedColourCheck() {
    }

    public static List<Problem> problems(TypedColour colour) {
        return List.of();
    }
}
