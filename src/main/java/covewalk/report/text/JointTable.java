package covewalk.report.text;

import covewalk.verdict.Difference;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The joints of a cove, a line each, in columns as wide as they need to be. */
final class JointTable {

    private static final String NONE = "-";
    private static final int LONGEST_REEL = 8;
    /** Position, steps and uncertainty stand to the right, so that their decimal marks stand below each other. */
    private static final Set<Integer> FIGURES = Set.of(0, 2, 3);

    private final Words words;

    JointTable(Words words) {
        this.words = words;
    }

    List<String> lines(List<JudgedJoint> joints) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(head());
        joints.forEach(joint -> rows.add(row(joint)));
        return PlainText.columns(rows, FIGURES);
    }

    private List<String> head() {
        return List.of("position", "reels", "steps", "uncertainty", "verdict", "confidence", "towards", "to-settle").stream()
                .map(column -> words.text("table.column." + column)).toList();
    }

    private List<String> row(JudgedJoint joint) {
        boolean read = joint.verdict() != Verdict.NOT_READ;
        return List.of(words.numbers().metres(joint.positionM()), reels(joint),
                measured(joint, difference -> words.numbers().steps(difference.steps())),
                measured(joint, difference -> words.numbers().steps(difference.standardUncertaintySteps())),
                words.verdict(joint.verdict()),
                read ? words.numbers().confidence(joint.confidence().beyond()) + "/"
                        + words.numbers().confidence(joint.confidence().within()) : NONE,
                measured(joint, difference -> words.towards(difference.towards())), words.toSettleInShort(joint.settle(), joint.verdict()));
    }

    private static String measured(JudgedJoint joint, Function<Difference, String> figure) {
        return joint.difference().map(figure).orElse(NONE);
    }

    private static String reels(JudgedJoint joint) {
        return String.join(" | ", joint.reels().stream()
                .map(reel -> Shortened.of(PlainText.calm(reel), LONGEST_REEL)).toList());
    }
}
