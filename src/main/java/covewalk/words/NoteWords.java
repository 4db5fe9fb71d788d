package covewalk.words;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Notes on the evidence as sentences. */
public final class NoteWords {

    private final Words words;

    public NoteWords(Words words) {
        this.words = words;
    }

    public String sentence(Note note) {
        String key = "note." + note.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return words.text(key, note.details().stream().map(this::readable).toArray(String[]::new));
    }

    public List<String> sentences(List<Note> notes) {
        return notes.stream().distinct().map(this::sentence).toList();
    }

    /** What is noted of single joints, with the positions of those it is noted of. */
    public Map<String, List<String>> byPlace(List<JudgedJoint> joints) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        for (JudgedJoint joint : joints) {
            for (String sentence : sentences(joint.notes())) {
                places.computeIfAbsent(sentence, first -> new ArrayList<>()).add(words.numbers().metres(joint.positionM()));
            }
        }
        return places;
    }

    /** A detail that is a fraction loses its idle decimals; anything else stays as it is. */
    private String readable(String detail) {
        return detail.matches("-?\\d+\\.\\d+(E-?\\d+)?") ? words.numbers().plain(Double.parseDouble(detail), 2) : detail;
    }
}
