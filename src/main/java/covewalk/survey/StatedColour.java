package covewalk.survey;

import covewalk.colour.CctDuv;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;

/** A colour somebody states (a target, a claimed centre), in the terms in which they stated it. */
public sealed interface StatedColour {

    UvPrime toUvPrime();

    /** Stated as CCT and Duv. */
    record ByCctDuv(CctDuv cctDuv) implements StatedColour {
        @Override
        public UvPrime toUvPrime() {
            return cctDuv.toUvPrime();
        }
    }

    /** Stated as CIE 1931 x, y. */
    record ByXy(Xy xy) implements StatedColour {
        @Override
        public UvPrime toUvPrime() {
            return xy.toUvPrime();
        }
    }
}
