package covewalk.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Readings that stand, against the description: cove, set-up, position and colour. */
final class ReadingCheck {

    private static final int REMEMBERED = 100_000;

    private final Map<String, Cove> coves = new HashMap<>();
    private final Map<String, SetUp> setUps = new HashMap<>();
    /** Those that are looked at twice, by identity: a log read from disk shares equal colours, and comparing them costs more. */
    private final Map<TypedColour, List<Problem>> colours = new IdentityHashMap<>();
    private final Map<String, Integer> coarse = new HashMap<>();
    private final Map<String, Problem> firstCoarse = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    ReadingCheck(Survey survey) {
        survey.coves().forEach(cove -> coves.putIfAbsent(cove.id(), cove));
        survey.setUps().forEach(setUp -> setUps.putIfAbsent(setUp.id(), setUp));
    }

    void take(Reading reading) {
        Cove cove = coves.get(reading.cove());
        if (cove == null) {
            add(reading, "cove", Problem.refusal("log.no-cove", reading.cove()));
        } else {
            checkPosition(reading, cove);
        }
        if (!setUps.containsKey(reading.setUp())) {
            add(reading, "setup", Problem.refusal("log.no-setup", reading.setUp()));
        }
        reading.colour().ifPresent(colour -> checkColour(reading, colour));
    }

    private void checkPosition(Reading reading, Cove cove) {
        double at = reading.positionM().value();
        if (at < 0 || at > cove.lengthM() + PlacementCheck.TAPE_M) {
            add(reading, "position_m", Problem.refusal("log.outside", reading.positionM().text(), cove.id(),
                    ColourDigits.metres(cove.lengthM())));
        } else if (reading.role() == Role.WALK && !cove.placements().isEmpty() && cove.placementAt(at).isEmpty()) {
            add(reading, "position_m", Problem.warning("log.in-gap", reading.positionM().text(), cove.id()));
        }
    }

    private void checkColour(Reading reading, TypedColour colour) {
        if (PlainWhite.is(colour)) {
            return;
        }
        if (colours.size() > REMEMBERED) {
            colours.clear();
        }
        for (Problem problem : colours.computeIfAbsent(colour, TypedColourCheck::problems)) {
            if (problem.key().startsWith("colour.coarse.")) {
                coarse.merge(problem.key(), 1, Integer::sum);
                firstCoarse.putIfAbsent(problem.key(), problem.at("", reading.line(), problem.column()));
            } else if (counts(problem, reading)) {
                add(reading, problem.column(), problem);
            }
        }
    }

    /** A dark reading is of what light is left, and that may lie anywhere, or be the meter's noise. */
    private static boolean counts(Problem problem, Reading reading) {
        return reading.role() != Role.DARK || problem.refused() && !problem.key().startsWith("colour.place.");
    }

    private void add(Reading reading, String column, Problem problem) {
        problems.add(problem.at("", reading.line(), column));
    }

    /** All problems; that digits are coarse is told once, with the number of readings, as it is mostly the meter's way. */
    List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        firstCoarse.forEach((key, first) -> {
            all.add(first);
            if (coarse.get(key) > 1) {
                all.add(Problem.warning("log.coarse-more", coarse.get(key)).at("", first.line(), first.column()));
            }
        });
        return all;
    }
}
