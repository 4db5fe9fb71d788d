package covewalk.survey.file;

import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Gives equal cells of a log the same objects: coves, set-ups, positions and digits repeat from row to row, so a million
 * readings fit in some 200 MB and most numbers are parsed once. Each table forgets what another value pushes out.
 */
final class SharedValues {

    private static final int SLOTS = 1 << 16;

    private record Number(String text, Optional<Typed> value) {
    }

    private final String[] texts = new String[SLOTS];
    private final Number[] numbers = new Number[SLOTS];
    private final TypedPair[] pairs = new TypedPair[SLOTS];
    private final List<Optional<TypedColour>> colours = new ArrayList<>(Collections.nCopies(SLOTS, Optional.empty()));

    /** The cell's text without spaces around it; empty where its bytes are no UTF-8. */
    Optional<String> text(Cells cells, int cell) {
        int slot = slot(cells, cell);
        String known = texts[slot];
        if (known == null || !same(known, cells, cell)) {
            Optional<String> fresh = cells.text(cell);
            if (fresh.isEmpty()) {
                return fresh;
            }
            known = fresh.get();
            texts[slot] = known;
        }
        return Optional.of(known.strip());
    }

    /** The cell's number with its digits; empty where it is none. */
    Optional<Typed> number(Cells cells, int cell) {
        int slot = slot(cells, cell);
        Number known = numbers[slot];
        if (known == null || !same(known.text, cells, cell)) {
            String text = cells.text(cell).orElse("");
            known = new Number(text, Typed.of(text));
            numbers[slot] = known;
        }
        return known.value;
    }

    TypedPair pair(Typed first, Typed second) {
        int slot = slot(hash(first, second));
        TypedPair known = pairs[slot];
        if (known == null || known.first() != first || known.second() != second) {
            known = new TypedPair(first, second);
            pairs[slot] = known;
        }
        return known;
    }

    /** The colour of these pairs, which come from here; one of them at least is not null. */
    Optional<TypedColour> colour(TypedPair cctDuv, TypedPair xy, TypedPair uvPrime) {
        int slot = slot(hash(cctDuv) * 31 * 31 + hash(xy) * 31 + hash(uvPrime));
        Optional<TypedColour> known = colours.get(slot);
        if (known.isPresent() && is(known.get().cctDuv(), cctDuv) && is(known.get().xy(), xy)
                && is(known.get().uvPrime(), uvPrime)) {
            return known;
        }
        Optional<TypedColour> fresh = Optional.of(new TypedColour(Optional.ofNullable(cctDuv), Optional.ofNullable(xy),
                Optional.ofNullable(uvPrime)));
        colours.set(slot, fresh);
        return fresh;
    }

    private static boolean is(Optional<TypedPair> known, TypedPair pair) {
        return known.orElse(null) == pair;
    }

    private static int hash(TypedPair pair) {
        return pair == null ? 0 : hash(pair.first(), pair.second());
    }

    /** The hash of a text grows by 31 a letter, so a small factor would make 0.4578, 0.4101 one with 0.4568, 0.4111. */
    private static int hash(Typed first, Typed second) {
        return first.text().hashCode() * 0x85EBCA6B + second.text().hashCode();
    }

    private static boolean same(String known, Cells cells, int cell) {
        int length = cells.to(cell) - cells.from(cell);
        if (known.length() != length) {
            return false;
        }
        byte[] bytes = cells.bytes();
        for (int i = 0, at = cells.from(cell); i < length; i++, at++) {
            if (known.charAt(i) != bytes[at]) { // a byte beyond ASCII is negative and equals no character
                return false;
            }
        }
        return true;
    }

    private static int slot(Cells cells, int cell) {
        byte[] bytes = cells.bytes();
        int hash = 0;
        for (int at = cells.from(cell); at < cells.to(cell); at++) {
            hash = 31 * hash + bytes[at];
        }
        return slot(hash);
    }

    private static int slot(int hash) {
        int mixed = hash * 0x9E3779B9;
        return (mixed ^ mixed >>> 15) & SLOTS - 1;
    }
}
