package covewalk.survey;

import java.util.Optional;

/** Whether an illuminance can be, in lx; the column of its problem is that of the reading log. */
public final class LuxCheck {

    /** Twice what direct sun gives, which is about 100000 lx (from memory). */
    static final double MOST_LX = 200_000;

    private LuxCheck() {
    }

    /** A refusal below 0, a warning above {@link #MOST_LX}; none from 0 up to there, both included. */
    public static Optional<Problem> problem(Typed lux) {
        if (lux.value() < 0) {
            return Optional.of(Problem.refusal("log.lux.negative", lux.text()).inColumn("lux"));
        }
        return lux.value() > MOST_LX ? Optional.of(Problem.warning("log.lux.large", lux.text()).inColumn("lux")) : Optional.empty();
    }
}
