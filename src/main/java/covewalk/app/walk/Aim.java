package covewalk.app.walk;

import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What the next reading is taken for.
 *
 * @param cove the cove's id
 * @param corrects the earlier reading in whose place it will stand
 */
record Aim(Role role, String cove, Typed positionM, Optional<Reading> corrects) {

    static Aim walk(String cove, double positionM) {
        return new Aim(Role.WALK, cove, typed(positionM), Optional.empty());
    }

    static Aim walk(String cove, Typed positionM) {
        return new Aim(Role.WALK, cove, positionM, Optional.empty());
    }

    static Aim correct(Reading reading) {
        return new Aim(reading.role(), reading.cove(), reading.positionM(), Optional.of(reading));
    }

    Aim as(Role other) {
        return new Aim(other, cove, positionM, Optional.empty());
    }

    double atM() {
        return positionM.value();
    }

    boolean walks() {
        return role == Role.WALK && corrects.isEmpty();
    }

    /** A position as a person would type it, to the centimetre. */
    private static Typed typed(double positionM) {
        BigDecimal plain = BigDecimal.valueOf(positionM).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        String text = plain.scale() < 1 ? plain.setScale(1, RoundingMode.UNNECESSARY).toPlainString() : plain.toPlainString();
        return new Typed(text, Double.parseDouble(text));
    }
}
