package covewalk.words;

import java.util.Arrays;
import java.util.List;

/** The cautions as sentences. Site rules, local codes and a licensed electrician come before all of them. */
public final class CautionWords {

    private final Words words;

    public CautionWords(Words words) {
        this.words = words;
    }

    /** Printed over any caution. */
    public String headLine() {
        return words.text("caution.head");
    }

    public String group(Caution.Group group) {
        return words.text("caution.group." + group.code());
    }

    public List<Caution> of(Caution.Group group) {
        return Arrays.stream(Caution.values()).filter(caution -> caution.group() == group).toList();
    }

    public String sentence(Caution caution) {
        return words.text("caution." + caution.code());
    }

    /** Where it comes from, in small print. */
    public String source(Caution caution) {
        return words.text("caution." + caution.code() + ".source");
    }
}
