package covewalk.app.surveys;

import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import java.util.List;
import java.util.Set;

/** What is to be said of an imported file: as everywhere, but where the commands name an option, the page names its box. */
final class ImportWords {

    private static final Set<String> OF_THE_PAGE = Set.of("import.which-cove", "import.no-such-cove", "import.no-positions",
            "import.beyond-the-end", "import.row.no-cove", "import.no-header", "import.no-colour", "import.twice",
            "import.strange-column", "import.position-unit", "import.row.uv-like-1976", "import.no-such-field",
            "import.no-such-column", "import.positions-in-file");

    private final Texts texts;

    ImportWords(Texts texts) {
        this.texts = texts;
    }

    String lines(List<Problem> problems) {
        return ProblemLines.of(problems, this::inFull, texts);
    }

    private String inFull(Problem problem) {
        String full = problem.inFull(texts.locale());
        if (!OF_THE_PAGE.contains(problem.key())) {
            return full;
        }
        String where = full.substring(0, full.length() - problem.sentence(texts.locale()).length());
        return where + texts.get("page." + problem.key(), problem.details().toArray(String[]::new));
    }
}
