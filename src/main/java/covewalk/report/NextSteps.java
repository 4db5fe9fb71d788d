package covewalk.report;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What to do next with a punch list, in order: read what still can be read before access goes, then put right. */
final class NextSteps {

    private final Words words;

    NextSteps(Words words) {
        this.words = words;
    }

    List<String> of(PunchList list) {
        List<String> steps = new ArrayList<>();
        add(steps, "next.not-read", notRead(list));
        add(steps, "next.read-again", numbers(list, EnumSet.of(Priority.READ_AGAIN)));
        add(steps, "next.first", numbers(list, EnumSet.of(Priority.FIRST)));
        add(steps, "next.then", numbers(list, EnumSet.of(Priority.NEXT)));
        add(steps, "next.agree", numbers(list, EnumSet.of(Priority.AGREE)));
        steps.add(words.text(steps.isEmpty() ? "next.none" : "next.close"));
        return steps;
    }

    private void add(List<String> steps, String key, String which) {
        if (!which.isEmpty()) {
            steps.add(words.text(key, which));
        }
    }

    private String numbers(PunchList list, Set<Priority> priorities) {
        return list.items().stream().filter(item -> priorities.contains(item.priority()))
                .map(item -> words.numbers().fixed(item.number(), 0)).collect(Collectors.joining(", "));
    }

    private String notRead(PunchList list) {
        return list.judgement().coves().stream().map(cove -> cove.joints().stream()
                        .filter(joint -> joint.verdict() == Verdict.NOT_READ)
                        .mapToDouble(JudgedJoint::positionM).mapToObj(words.numbers()::metres)
                        .collect(Collectors.collectingAndThen(Collectors.joining(", "),
                                places -> places.isEmpty() ? "" : words.text("next.places", cove.cove().id(), places))))
                .filter(places -> !places.isEmpty()).collect(Collectors.joining("; "));
    }
}
