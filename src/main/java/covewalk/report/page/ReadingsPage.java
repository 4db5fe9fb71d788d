package covewalk.report.page;

import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The readings as typed, in the order of the log; what was corrected or withdrawn stays, struck through.
 *
 * @param leftOut says how many are not printed; empty where all are
 */
record ReadingsPage(List<Row> rows, String leftOut) {

    /**
     * A reading.
     *
     * @param line its place in the log, by which others point to it
     * @param struck whether it no longer stands
     * @param points the line of the reading that replaces it, or that it replaces; 0 where there is none
     * @param remark what became of it, or of which one it is a correction
     * @param note what is not as usual, and what was noted
     */
    record Row(int line, boolean struck, List<String> cells, int points, String remark, String note) {
    }

    /** Makes the list. */
    static final class Maker {

        /** More than this fill more paper than anybody reads: then only those that were corrected are printed. */
        private static final int MOST = 2000;
        private static final int LONGEST = 24;
        private static final int LONGEST_NOTE = 90;

        private final Words words;
        private final String firstSetUp;
        private final Map<String, Reading> byId = new HashMap<>();
        private final Map<String, Reading> replacedBy = new HashMap<>();

        Maker(Words words, String firstSetUp) {
            this.words = words;
            this.firstSetUp = firstSetUp;
        }

        ReadingsPage of(List<Reading> log) {
            boolean all = log.size() <= MOST;
            for (Reading reading : log) {
                byId.put(reading.id(), reading);
                if (!reading.replaces().isEmpty()) {
                    replacedBy.putIfAbsent(reading.replaces(), reading);
                }
            }
            List<Reading> printed = all ? log : log.stream().filter(this::corrected).limit(MOST).toList();
            return new ReadingsPage(new LazyList<>(printed, this::row), all ? "" : words.text("readings.left-out",
                    words.numbers().fixed(log.size() - printed.size(), 0)));
        }

        private boolean corrected(Reading reading) {
            return !reading.replaces().isEmpty() || replacedBy.containsKey(reading.id());
        }

        private Row row(Reading reading) {
            Reading by = replacedBy.get(reading.id());
            Reading old = byId.get(reading.replaces());
            Reading other = by != null ? by : old;
            return new Row(reading.line(), by != null, cells(reading), other == null ? 0 : other.line(), remark(reading, by),
                    Stream.of(how(reading), Shortened.of(reading.note(), LONGEST_NOTE)).filter(text -> !text.isEmpty())
                            .collect(Collectors.joining("; ")));
        }

        private List<String> cells(Reading reading) {
            List<String> cells = new ArrayList<>();
            cells.add(Shortened.of(reading.id(), LONGEST));
            cells.add(words.text("readings.place", Shortened.of(reading.cove(), LONGEST), Shortened.of(reading.positionM().text(), LONGEST)));
            cells.add(reading.colour().map(ReadingsPage.Maker::typed).orElse(""));
            cells.add(Shortened.of(reading.lux().map(Typed::text).orElse(""), LONGEST));
            cells.add(Shortened.of(reading.takenAt().replace('T', ' '), LONGEST));
            return cells;
        }

        /** What is not as usual: another role than walking, another set-up than the first, another round. */
        private String how(Reading reading) {
            List<String> how = new ArrayList<>();
            if (reading.role() != Role.WALK) {
                how.add(words.text("readings.role." + reading.role().code()));
            }
            if (!reading.setUp().equals(firstSetUp)) {
                how.add(words.text("warning.set-up", Shortened.of(reading.setUp(), LONGEST)));
            }
            if (reading.round() > 1) {
                how.add(words.text("readings.round", words.numbers().fixed(reading.round(), 0)));
            }
            return String.join(", ", how);
        }

        /** All the pairs that were given, in the order in which they count. */
        private static String typed(TypedColour colour) {
            List<String> pairs = new ArrayList<>();
            colour.xy().ifPresent(pair -> pairs.add(pair("x", "y", pair)));
            colour.uvPrime().ifPresent(pair -> pairs.add(pair("u'", "v'", pair)));
            colour.cctDuv().ifPresent(pair -> pairs.add(pair("CCT", "Duv", pair)));
            return String.join("; ", pairs);
        }

        private static String pair(String first, String second, TypedPair pair) {
            return first + " " + pair.first().text() + " " + second + " " + pair.second().text();
        }

        private String remark(Reading reading, Reading by) {
            String old = Shortened.of(reading.replaces(), LONGEST);
            String is = old.isEmpty() ? "" : words.text(reading.withdraws() ? "readings.withdraws" : "readings.corrects", old);
            String became = by == null ? "" : words.text(by.withdraws() ? "readings.withdrawn" : "readings.corrected",
                    Shortened.of(by.id(), LONGEST));
            return is.isEmpty() || became.isEmpty() ? is + became : is + "; " + became;
        }
    }
}
