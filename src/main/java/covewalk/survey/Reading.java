package covewalk.survey;

import java.util.Objects;
import java.util.Optional;

/**
 * One value from the meter at a station, kept as typed. A withdrawal is a reading without a colour that replaces one.
 *
 * @param id unique in its survey
 * @param cove the cove's id
 * @param positionM from the cove's datum, m, with the digits as typed; a dark or reference reading has one too
 * @param setUp the set-up's id
 * @param round counts reading again after a verdict was seen, from 1
 * @param colour empty only in a withdrawal
 * @param lux illuminance or what the meter gave in its place, lx
 * @param takenAt ISO 8601 date and time as written, or empty
 * @param replaces the id of the reading that this one corrects or withdraws, or empty
 * @param line its line in the log, from 1; 0 before it is there
 */
public record Reading(String id, String cove, Typed positionM, Role role, String setUp, int round,
                      Optional<TypedColour> colour, Optional<Typed> lux, String takenAt, String replaces, String note,
                      int line) {

    public Reading {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(cove, "cove");
        Objects.requireNonNull(positionM, "positionM");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(setUp, "setUp");
        Objects.requireNonNull(colour, "colour");
        Objects.requireNonNull(lux, "lux");
        Objects.requireNonNull(takenAt, "takenAt");
        Objects.requireNonNull(replaces, "replaces");
        Objects.requireNonNull(note, "note");
        if (round < 1) {
            throw new IllegalArgumentException("round " + round + " of reading " + id + ": rounds count from 1");
        }
        if (colour.isEmpty() && (replaces.isEmpty() || note.isEmpty())) {
            throw new IllegalArgumentException(
                    "reading " + id + " has no colour: only a withdrawal has none, and it names what it replaces and why");
        }
    }

    /** Whether it takes an earlier reading back without giving another value. */
    public boolean withdraws() {
        return colour.isEmpty();
    }

    /** The same reading at its line of the log. */
    public Reading atLine(int atLine) {
        return new Reading(id, cove, positionM, role, setUp, round, colour, lux, takenAt, replaces, note, atLine);
    }
}
