package covewalk.report.punch;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.FileNames;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What looks wrong in a survey, as people on the site say it: by cove, position, reel or reading, never by file and line.
 * Of one kind the first few are told, of the rest how many there are.
 */
public final class WarningWords {

    private static final int SHOWN = 3;
    private static final int LONGEST = 40;
    private static final Pattern LISTED = Pattern.compile("(coves|reels|setups)\\[(\\d+)](?:\\.placements\\[(\\d+)])?.*");

    private final Words words;
    private final Survey survey;
    private final Map<Integer, Reading> byLine = new HashMap<>();
    private final Map<String, List<String>> byCove = new LinkedHashMap<>();
    private final List<String> general = new ArrayList<>();

    public WarningWords(Words words, Audit audit) {
        this.words = words;
        this.survey = audit.judgement().survey();
        audit.log().forEach(reading -> byLine.put(reading.line(), reading));
        kinds(audit.warnings()).values().forEach(this::tell);
    }

    /** Warnings that belong to one cove. */
    public List<String> ofCove(String cove) {
        return byCove.getOrDefault(cove, List.of());
    }

    /** All others. */
    public List<String> general() {
        return general;
    }

    private static Map<String, List<Problem>> kinds(List<Problem> warnings) {
        Map<String, List<Problem>> kinds = new LinkedHashMap<>();
        String kind = "";
        for (Problem warning : warnings) {
            kind = warning.countsTheOneBefore() ? kind : warning.key();
            kinds.computeIfAbsent(kind, first -> new ArrayList<>()).add(warning);
        }
        return kinds;
    }

    private void tell(List<Problem> kind) {
        kind.stream().limit(SHOWN).forEach(this::tell);
        if (kind.size() > SHOWN) {
            general.add(words.text("warning.more", sentence(kind.get(0)), words.numbers().fixed(kind.size() - SHOWN, 0)));
        }
    }

    private void tell(Problem warning) {
        String place = place(warning);
        cove(warning).map(id -> byCove.computeIfAbsent(id, first -> new ArrayList<>())).orElse(general)
                .add(place.isEmpty() ? sentence(warning) : words.text("warning.at", place, sentence(warning)));
    }

    private String sentence(Problem warning) {
        return warning.sentence(words.locale());
    }

    private Optional<String> cove(Problem warning) {
        if (reading(warning).isPresent()) {
            return reading(warning).map(Reading::cove);
        }
        Matcher listed = LISTED.matcher(warning.column());
        return listed.matches() && listed.group(1).equals("coves") ? listedCove(listed).map(Cove::id) : Optional.empty();
    }

    private String place(Problem warning) {
        Matcher listed = LISTED.matcher(warning.column());
        if (listed.matches()) {
            return switch (listed.group(1)) {
                case "coves" -> listedCove(listed).map(cove -> place(cove, listed.group(3))).orElse("");
                case "reels" -> at(survey.reels(), listed).map(reel -> words.text("warning.reel", shortened(reel.id()))).orElse("");
                default -> at(survey.setUps(), listed).map(setUp -> words.text("warning.set-up", shortened(setUp.id()))).orElse("");
            };
        }
        return reading(warning).map(reading -> words.text("warning.reading", shortened(reading.id()), shortened(reading.cove()),
                words.lengths().first(reading.positionM().value()))).orElse("");
    }

    private Optional<Reading> reading(Problem warning) {
        return warning.file().equals(FileNames.LOG) ? Optional.ofNullable(byLine.get(warning.line())) : Optional.empty();
    }

    private String place(Cove cove, String placement) {
        return placement == null || Integer.parseInt(placement) >= cove.placements().size()
                ? words.text("warning.cove", shortened(cove.id()))
                : words.text("warning.cove-at", shortened(cove.id()), words.lengths().first(beginOf(cove, Integer.parseInt(placement))));
    }

    /** Where the trouble begins: a gap before a placement begins where the one before it ends. */
    private static double beginOf(Cove cove, int placement) {
        List<Placement> row = cove.placements();
        double from = row.get(placement).fromM();
        return placement > 0 && row.get(placement - 1).toM() < from ? row.get(placement - 1).toM() : from;
    }

    private Optional<Cove> listedCove(Matcher listed) {
        return at(survey.coves(), listed);
    }

    private static <T> Optional<T> at(List<T> list, Matcher listed) {
        int index = Integer.parseInt(listed.group(2));
        return index < list.size() ? Optional.of(list.get(index)) : Optional.empty();
    }

    private static String shortened(String id) {
        return Shortened.of(id, LONGEST);
    }
}
