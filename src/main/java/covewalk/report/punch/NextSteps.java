package covewalk.report.punch;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What to do next with a punch list, in order: read what still can be read before access goes, then put right. */
public final class NextSteps {

    private static final int LONGEST = 40;

    private final Words words;

    public NextSteps(Words words) {
        this.words = words;
    }

    public List<String> of(PunchList list) {
        List<String> steps = new ArrayList<>();
        if (restsOnADrift(list)) {
            steps.add(words.text("next.drift"));
        }
        list.judgement().coves().stream().filter(cove -> cove.stations().isEmpty())
                .forEach(cove -> steps.add(words.text("next.cove", Shortened.of(cove.cove().id(), LONGEST))));
        String notRead = notRead(list);
        if (!notRead.isEmpty()) {
            steps.add(words.text("next.not-read", notRead));
        }
        add(steps, "next.read-again", list, Priority.READ_AGAIN);
        add(steps, "next.first", list, Priority.FIRST);
        add(steps, steps.isEmpty() ? "next.put-right" : "next.then", list, Priority.NEXT);
        add(steps, "next.agree", list, Priority.AGREE);
        steps.add(words.text(steps.isEmpty() ? "next.none" : "next.close"));
        return steps;
    }

    /** Where meter or light drifted and that was left in, a difference between two places may be one between two times. */
    private static boolean restsOnADrift(PunchList list) {
        Set<Note.Kind> noted = list.judgement().notes().stream().map(Note::kind).collect(Collectors.toSet());
        return !list.items().isEmpty() && !noted.contains(Note.Kind.DRIFT_CORRECTED)
                && (noted.contains(Note.Kind.REFERENCE_DRIFT) || noted.contains(Note.Kind.REFERENCE_DRIFT_BY_ORDER));
    }

    private void add(List<String> steps, String key, PunchList list, Priority priority) {
        List<String> which = list.items().stream().filter(item -> item.priority() == priority)
                .map(item -> words.numbers().fixed(item.number(), 0)).toList();
        if (!which.isEmpty()) {
            steps.add(words.text(key + (which.size() == 1 ? ".one" : ".more"), String.join(", ", which)));
        }
    }

    private String notRead(PunchList list) {
        return list.judgement().coves().stream().filter(cove -> !cove.stations().isEmpty()).map(cove -> cove.joints().stream()
                        .filter(joint -> joint.verdict() == Verdict.NOT_READ)
                        .mapToDouble(JudgedJoint::positionM).mapToObj(words.lengths()::first)
                        .collect(Collectors.collectingAndThen(Collectors.joining(", "),
                                places -> places.isEmpty() ? "" : words.text("next.places", Shortened.of(cove.cove().id(), LONGEST), places))))
                .filter(places -> !places.isEmpty()).collect(Collectors.joining("; "));
    }
}
