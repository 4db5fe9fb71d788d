package covewalk.survey;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One supplied reel of strip with its label. Label texts are kept as printed: bin codes are each maker's own and are
 * compared only as text within one maker.
 *
 * @param made date made as printed: year, month or day ("2026-07")
 * @param lengthM length on the label, m
 * @param claimedSteps steps within which the maker claims the reel to lie of its centre
 * @param claimedCentre the centre of that claim, where it is not the nominal CCT's
 */
public record Reel(String id, String maker, String product, String gtin, OptionalInt nominalCct, String bin, String lot,
                   String serial, String made, String invoice, OptionalDouble lengthM, OptionalDouble claimedSteps,
                   Optional<StatedColour> claimedCentre) {

    /** Whether a meter may err differently on the two: maker or product differ, or one of them is unknown. */
    public boolean mayBeUnlike(Reel other) {
        return maker.isEmpty() || product.isEmpty() || !maker.equals(other.maker) || !product.equals(other.product);
    }

    /** What the label says, in the order of a label, without what is unknown. */
    public List<LabelLine> label() {
        return LabelLine.of(this);
    }
}
