package covewalk.report.page;

import covewalk.survey.file.Photo;
import covewalk.words.Words;
import java.util.List;

/**
 * A page for one reader, to lie beside the punch list, all of it in words.
 *
 * @param name what kind of page it is
 */
public record SidePage(Words words, PageStyle style, RunningHead head, String name, String title, List<Section> sections) {

    public SidePage {
        sections = List.copyOf(sections);
    }

    public String language() {
        return words.locale().toLanguageTag();
    }

    /**
     * A part of it.
     *
     * @param ownSheet whether it begins on a sheet of its own
     * @param pictures SVG
     */
    record Section(String heading, boolean ownSheet, List<Fact> facts, List<String> sentences, List<String> pictures, List<Table> tables,
                   List<Photo> photos) {

        static Section of(String heading, List<Fact> facts, List<String> sentences, Table... tables) {
            return new Section(heading, false, facts, sentences, List.of(), List.of(tables), List.of());
        }
    }

    /**
     * Rows under named columns; as many cells in each.
     *
     * @param style as the style sheet calls it; empty for the usual one
     */
    record Table(String title, String style, List<String> columns, List<List<String>> rows) {

        Table(String title, List<String> columns, List<List<String>> rows) {
            this(title, "", columns, rows);
        }
    }
}
