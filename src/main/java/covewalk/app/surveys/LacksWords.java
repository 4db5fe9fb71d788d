package covewalk.app.surveys;

import covewalk.app.text.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a survey still lacks, in one line. */
final class LacksWords {

    private final Texts texts;

    LacksWords(Texts texts) {
        this.texts = texts;
    }

    /**
     * @param date of the visit, or empty
     * @param lacks empty while it is not known
     * @param unkept readings that are not on disk
     */
    String line(String date, Optional<Lacks> lacks, int unkept) {
        List<String> parts = new ArrayList<>();
        if (!date.isEmpty()) {
            parts.add(date);
        }
        if (unkept > 0) {
            parts.add(texts.count("lacks.unkept", unkept));
        }
        parts.addAll(lacks.map(this::parts).orElse(List.of(texts.get("recent.looking"))));
        return String.join(" \u00b7 ", parts);
    }

    private List<String> parts(Lacks lacks) {
        List<String> parts = new ArrayList<>();
        if (lacks.coves() == 0) {
            parts.add(texts.get("lacks.coves"));
        } else if (lacks.notWalked() > 0) {
            parts.add(texts.count("lacks.walked", lacks.notWalked()));
        }
        if (lacks.unsettled().isEmpty()) {
            parts.add(texts.get("lacks.not-judged"));
        } else if (lacks.unsettled().getAsLong() > 0) {
            parts.add(texts.count("lacks.unsettled", lacks.unsettled().getAsLong()));
        }
        if (lacks.beyond().orElse(0) > 0) {
            parts.add(texts.count("lacks.beyond", lacks.beyond().getAsLong()));
        }
        return parts.isEmpty() ? List.of(texts.get("lacks.nothing")) : parts;
    }
}
