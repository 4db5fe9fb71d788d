package covewalk.survey.file.log;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.disk.Cells;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes a reading of a row, or tells everything that is wrong with it. */
final class RowReader {

    private static final int MOST_ROUNDS = 1000;

    /** Column by column and two by two, as a colour is taken. */
    private static final LogColumn[] COLOUR =
            {LogColumn.CCT_K, LogColumn.DUV, LogColumn.X, LogColumn.Y, LogColumn.U_PRIME, LogColumn.V_PRIME};

    private final SharedColours colours = new SharedColours();
    private final Typed[] colour = new Typed[COLOUR.length];
    private final RowFields row;
    private final Supplier<String> firstSetUp;
    private String lastTakenAt = "";

    /** @param firstSetUp the set-up of rows that name none; asked for each of them */
    RowReader(LogHeader header, Supplier<String> firstSetUp) {
        this.row = new RowFields(header);
        this.firstSetUp = firstSetUp;
    }

    /** The reading; empty where the row is damaged. {@link #problems()} says what is wrong or looks wrong in it. */
    Optional<Reading> read(Cells cells, int line) {
        return row.take(cells) ? reading(line) : Optional.empty();
    }

    List<Problem> problems() {
        return row.problems();
    }

    private Optional<Reading> reading(int line) {
        String id = row.needed(LogColumn.READING, row.text(LogColumn.READING).strip());
        String cove = row.needed(LogColumn.COVE, row.word(LogColumn.COVE));
        Typed position = position();
        Role role = role();
        String setUp = row.isBlank(LogColumn.SETUP) ? firstSetUp.get() : row.word(LogColumn.SETUP);
        int round = round();
        Optional<TypedColour> colour = colour();
        Optional<Typed> lux = row.number(LogColumn.LUX);
        String takenAt = takenAt();
        String replaces = row.word(LogColumn.REPLACES);
        String note = row.text(LogColumn.NOTE);
        return row.refused() || lacksColour(colour, replaces, note) ? Optional.empty()
                : Optional.of(new Reading(id, cove, position, role, setUp, round, colour, lux, takenAt, replaces, note, line));
    }

    /** Only a withdrawal has no colour: it names what it takes back, and why. */
    private boolean lacksColour(Optional<TypedColour> colour, String replaces, String note) {
        if (colour.isPresent()) {
            return false;
        }
        if (replaces.isEmpty()) {
            row.problems().add(Problem.refusal("log.row.no-colour"));
        } else if (note.isEmpty()) {
            row.add(LogColumn.NOTE, Problem.refusal("log.row.withdrawal-note", replaces));
        }
        return row.refused();
    }

    private Typed position() {
        row.needed(LogColumn.POSITION_M, row.isBlank(LogColumn.POSITION_M) ? "" : "given");
        return row.number(LogColumn.POSITION_M).orElse(null);
    }

    private Optional<TypedColour> colour() {
        boolean any = false;
        for (int first = 0; first < COLOUR.length; first += 2) {
            any |= takePair(first);
        }
        return any ? colours.of(colour) : Optional.empty();
    }

    /** Whether the pair is there; not where half of it is missing or no number. */
    private boolean takePair(int first) {
        LogColumn one = COLOUR[first];
        LogColumn other = COLOUR[first + 1];
        Typed ofOne = row.number(one).orElse(null);
        Typed ofOther = row.number(other).orElse(null);
        if (row.isBlank(one) != row.isBlank(other)) {
            LogColumn missing = row.isBlank(one) ? one : other;
            row.add(missing, Problem.refusal("log.cell.half", (missing == one ? other : one).code()));
        }
        boolean both = ofOne != null && ofOther != null;
        colour[first] = both ? ofOne : null;
        colour[first + 1] = both ? ofOther : null;
        return both;
    }

    private Role role() {
        String code = row.word(LogColumn.ROLE);
        Optional<Role> role = code.isEmpty() ? Optional.of(Role.WALK) : Role.of(code);
        if (role.isEmpty()) {
            row.add(LogColumn.ROLE, Problem.refusal("log.cell.role", code));
        }
        return role.orElse(Role.WALK);
    }

    private int round() {
        String digits = row.word(LogColumn.ROUND);
        if (digits.isEmpty() || digits.equals("1")) {
            return 1;
        }
        boolean whole = digits.length() <= 4 && digits.chars().allMatch(c -> c >= '0' && c <= '9');
        int round = whole ? Integer.parseInt(digits) : 0;
        if (round < 1 || round > MOST_ROUNDS) {
            row.add(LogColumn.ROUND, Problem.refusal("log.cell.round", digits, MOST_ROUNDS));
        }
        return round;
    }

    private String takenAt() {
        String text = row.text(LogColumn.TAKEN_AT);
        if (text.equals(lastTakenAt)) {
            return lastTakenAt; // several readings of one minute share it
        }
        if (!text.isEmpty() && !IsoTime.looksRight(text.strip())) {
            row.add(LogColumn.TAKEN_AT, Problem.warning("log.cell.time", text));
        }
        lastTakenAt = text;
        return text;
    }
}
