package covewalk.words;

import covewalk.verdict.Note;
import java.util.List;
import java.util.Locale;

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

    /** A detail that is a fraction loses its idle decimals; anything else stays as it is. */
    private String readable(String detail) {
        return detail.matches("-?\\d+\\.\\d+(E-?\\d+)?") ? words.numbers().plain(Double.parseDouble(detail), 2) : detail;
    }
}
