package covewalk.survey.file.log;

import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import java.util.Optional;

/** Invented readings. */
final class Readings {

    private Readings() {
    }

    static Reading reading(String id, String positionM, String note) {
        return new Reading(id, "C1", Typed.of(positionM).orElseThrow(), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(Typed.of("0.4580").orElseThrow(), Typed.of("0.4100").orElseThrow())),
                Typed.of("310"), "2026-10-05T18:31", "", note, 0);
    }

    static Reading withdrawal(String id, String replaced) {
        return new Reading(id, "C1", Typed.of("1.0").orElseThrow(), Role.WALK, "A", 1, Optional.empty(), Optional.empty(), "",
                replaced, "read by mistake", 0);
    }
}
