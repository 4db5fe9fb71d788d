package covewalk.survey;

import java.util.Objects;

/** Two numbers that give a colour together, with their digits as typed. */
public record TypedPair(Typed first, Typed second) {

    public TypedPair {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
    }
}
