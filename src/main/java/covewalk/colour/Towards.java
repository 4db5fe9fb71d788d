package covewalk.colour;

import java.util.ArrayList;
import java.util.List;

/** Which way one colour lies from another, in words: along the Planckian locus and across it. */
public record Towards(Along along, Across across) {

    /** A word is given where its part is at least this share of the whole difference. Common practice, no source. */
    private static final double WORTH_A_WORD = 0.25;

    /** Along the locus: towards lower CCT, towards higher, or neither to speak of. */
    public enum Along { WARMER, COOLER, SAME }

    /** Across the locus: above it, below it, or neither to speak of. */
    public enum Across { GREENER, PINKER, SAME }

    /**
     * From {@code a} to {@code b}, judged in u'v' along the tangent and the normal of the locus where it is nearest to
     * the middle between them. The same colour twice gives SAME and SAME; any other pair gives at least one word.
     */
    public static Towards from(UvPrime a, UvPrime b) {
        double du = b.u() - a.u();
        double dv = b.v() - a.v();
        double least = WORTH_A_WORD * Math.hypot(du, dv);
        if (least == 0) {
            return new Towards(Along.SAME, Across.SAME);
        }
        LocusPoint p = PlanckianLocus.pointNearest((a.u() + b.u()) / 2, (a.v() + b.v()) / 3);
        double tu = p.tu();
        double tv = 1.5 * p.tv();
        double length = Math.hypot(tu, tv);
        return new Towards(along((du * tu + dv * tv) / length, least), across((dv * tu - du * tv) / length, least));
    }

    /** As "warmer, pinker" or "cooler"; "same" where there is nothing to say. */
    public String words() {
        List<String> words = new ArrayList<>();
        switch (along) {
            case WARMER -> words.add("warmer");
            case COOLER -> words.add("cooler");
            case SAME -> { }
        }
        switch (across) {
            case GREENER -> words.add("greener");
            case PINKER -> words.add("pinker");
            case SAME -> { }
        }
        return words.isEmpty() ? "same" : String.join(", ", words);
    }

    @Override
    public String toString() {
        return words();
    }

    private static Along along(double warmer, double least) {
        if (Math.abs(warmer) < least) {
            return Along.SAME;
        }
        return warmer > 0 ? Along.WARMER : Along.COOLER;
    }

    private static Across across(double greener, double least) {
        if (Math.abs(greener) < least) {
            return Across.SAME;
        }
        return greener > 0 ? Across.GREENER : Across.PINKER;
    }
}
