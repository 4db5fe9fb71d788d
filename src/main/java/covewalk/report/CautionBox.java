package covewalk.report;

import covewalk.words.Caution;
import covewalk.words.CautionWords;
import covewalk.words.Words;
import java.util.Arrays;
import java.util.List;

/** The cautions of a page, by where the danger lies; the label of a fact is the sentence, its text the source. */
record CautionBox(String headLine, List<Group> groups) {

    /** Cautions of one kind. */
    record Group(String name, List<Fact> cautions) {
    }

    static CautionBox of(Words words) {
        CautionWords cautions = new CautionWords(words);
        return new CautionBox(cautions.headLine(), Arrays.stream(Caution.Group.values())
                .map(group -> new Group(cautions.group(group), cautions.of(group).stream()
                        .map(caution -> new Fact(cautions.sentence(caution), cautions.source(caution))).toList()))
                .toList());
    }
}
