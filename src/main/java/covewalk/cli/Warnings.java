package covewalk.cli;

import covewalk.survey.Problem;
import covewalk.words.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What was taken and looks wrong, in words. Warnings of one kind come together, and after the first few only their
 * number: a meter that gives too few digits gives them in every row.
 */
final class Warnings {

    private static final int SHOWN = 3;

    private final Map<String, List<Problem>> kinds = new LinkedHashMap<>();
    private final List<Problem> all;
    private final Words language;

    Warnings(List<Problem> warnings) {
        this(warnings, Words.english());
    }

    Warnings(List<Problem> warnings, Words language) {
        this.language = language;
        all = List.copyOf(warnings);
        String kind = "";
        for (Problem warning : warnings) {
            kind = warning.countsTheOneBefore() ? kind : warning.key();
            kinds.computeIfAbsent(kind, first -> new ArrayList<>()).add(warning);
        }
    }

    /** These and others. */
    Warnings and(List<Problem> others) {
        return new Warnings(Stream.concat(all.stream(), others.stream()).toList(), language);
    }

    List<Problem> all() {
        return all;
    }

    List<String> inWords() {
        List<String> words = new ArrayList<>();
        kinds.values().forEach(kind -> {
            kind.stream().limit(SHOWN).forEach(warning -> words.add(warning.inFull(language.locale())));
            if (kind.size() > SHOWN) {
                words.add(language.moreAlike(kind.size() - SHOWN));
            }
        });
        return words;
    }

    void print(PrintWriter to) {
        inWords().forEach(to::println);
    }
}
