package covewalk.report.page;

import covewalk.words.Caution;
import covewalk.words.CautionWords;
import covewalk.words.Words;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The cautions of a page, by where the danger lies; the label of a fact is the sentence, its text the source. */
record CautionBox(String headLine, List<Group> groups) {

    /**
     * Cautions of one kind.
     *
     * @param sources of them, in their order
     */
    record Group(String name, List<String> cautions, String sources) {
    }

    static CautionBox of(Words words) {
        CautionWords cautions = new CautionWords(words);
        return new CautionBox(cautions.headLine(), Arrays.stream(Caution.Group.values())
                .map(group -> new Group(cautions.group(group), cautions.of(group).stream().map(cautions::sentence).toList(),
                        words.text("page.sources", cautions.of(group).stream().map(cautions::source).distinct()
                                .collect(Collectors.joining("; ")))))
                .toList());
    }
}
