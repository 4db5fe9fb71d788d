package covewalk.words;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Notes on the evidence as sentences. */
public final class NoteWords {

    /** Those whose last detail is a direction. */
    private static final Set<Note.Kind> DIRECTED = Set.of(Note.Kind.REFERENCE_DRIFT, Note.Kind.REFERENCE_DRIFT_BY_ORDER);

    /** Which detail is a position, in m. */
    private static final Map<Note.Kind, Integer> POSITIONS = Map.of(Note.Kind.LAST_STATION_OFF, 1, Note.Kind.REFERENCE_DRIFT, 2,
            Note.Kind.REFERENCE_DRIFT_BY_ORDER, 2);

    private final Words words;

    public NoteWords(Words words) {
        this.words = words;
    }

    public String sentence(Note note) {
        String key = "note." + note.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        List<String> details = new ArrayList<>(note.details());
        if (DIRECTED.contains(note.kind())) {
            details.set(details.size() - 1, direction(details.get(details.size() - 1)));
        }
        Optional.ofNullable(POSITIONS.get(note.kind())).ifPresent(i -> details.set(i, position(details.get(i))));
        for (int i = note.kind().names(); i < details.size(); i++) {
            details.set(i, readable(details.get(i)));
        }
        return words.text(key, details.toArray(String[]::new));
    }

    /** From a direction as a note keeps it, such as "warmer, pinker", which is English whatever the language. */
    private String direction(String kept) {
        return Arrays.stream(kept.split(", ")).map(word -> words.text("towards." + word)).collect(Collectors.joining(", "));
    }

    private String position(String m) {
        return words.lengths().first(Double.parseDouble(m));
    }

    public List<String> sentences(List<Note> notes) {
        return notes.stream().distinct().map(this::sentence).toList();
    }

    /** What is noted of single joints, with the positions of those it is noted of. */
    public Map<String, List<String>> byPlace(List<JudgedJoint> joints) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        for (JudgedJoint joint : joints) {
            for (String sentence : sentences(joint.notes())) {
                places.computeIfAbsent(sentence, first -> new ArrayList<>()).add(words.lengths().first(joint.positionM()));
            }
        }
        return places;
    }

    /** A detail that is a fraction loses its idle decimals; anything else stays as it is. */
    private String readable(String detail) {
        return detail.matches("-?\\d+\\.\\d+(E-?\\d+)?") ? words.numbers().plain(Double.parseDouble(detail), 2) : detail;
    }
}
