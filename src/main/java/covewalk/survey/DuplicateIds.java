package covewalk.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Two things of one kind with the same id: nobody could tell which one is meant. */
final class DuplicateIds {

    private DuplicateIds() {
    }

    /** @param list the list's name in the description, such as {@code reels} */
    static List<Problem> problems(String list, List<String> ids) {
        List<Problem> problems = new ArrayList<>();
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            Integer before = first.putIfAbsent(ids.get(i), i);
            if (before != null) {
                problems.add(Problem.refusal("survey.id-twice", ids.get(i), list + "[" + before + "]")
                        .inColumn(list + "[" + i + "].id"));
            }
        }
        return problems;
    }
}
