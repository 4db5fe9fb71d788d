package covewalk.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Readings that stand, against the description: cove, set-up, position, colour and illuminance. */
final class ReadingCheck {

    private static final int REMEMBERED = 100_000;

    private final Map<String, Cove> coves = new HashMap<>();
    private final Map<String, SetUp> setUps = new HashMap<>();
    /** Those that are looked at twice, by identity: a log read from disk shares equal colours, and comparing them costs more. */
    private final Map<TypedColour, List<Problem>> colours = new IdentityHashMap<>();
    /** What many readings have in common, by its cause: it is told once. */
    private final Map<String, Problem> first = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    ReadingCheck(Survey survey) {
        survey.coves().forEach(cove -> coves.putIfAbsent(cove.id(), cove));
        survey.setUps().forEach(setUp -> setUps.putIfAbsent(setUp.id(), setUp));
    }

    void take(Reading reading) {
        Cove cove = coves.get(reading.cove());
        if (cove == null) {
            count("cove " + reading.cove(), reading, "cove", Problem.refusal("log.no-cove", reading.cove()));
        } else {
            checkPosition(reading, cove);
        }
        if (!setUps.containsKey(reading.setUp())) {
            count("setup " + reading.setUp(), reading, "setup", Problem.refusal("log.no-setup", reading.setUp()));
        }
        reading.colour().ifPresent(colour -> checkColour(reading, colour));
        reading.lux().flatMap(LuxCheck::problem).ifPresent(problem -> checkLux(reading, problem));
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
                count(problem.key(), reading, problem.column(), problem);
            } else if (counts(problem, reading)) {
                add(reading, problem.column(), problem);
            }
        }
    }

    /** Too much is mostly a wrong unit, and then of every reading. */
    private void checkLux(Reading reading, Problem problem) {
        if (problem.refused()) {
            add(reading, problem.column(), problem);
        } else {
            count(problem.key(), reading, problem.column(), problem);
        }
    }

    /** A dark reading is of what light is left, and that may lie anywhere, or be the meter's noise. */
    private static boolean counts(Problem problem, Reading reading) {
        return reading.role() != Role.DARK || problem.refused() && !problem.key().startsWith("colour.place.");
    }

    private void add(Reading reading, String column, Problem problem) {
        problems.add(problem.at("", reading.line(), column));
    }

    private void count(String cause, Reading reading, String column, Problem problem) {
        if (counts.merge(cause, 1, Integer::sum) == 1) {
            first.put(cause, problem.at("", reading.line(), column));
        }
    }

    /** All problems; what many readings have in common is told once, with their number. */
    List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        first.forEach((cause, problem) -> {
            all.add(problem);
            if (counts.get(cause) > 1) {
                all.add((problem.refused() ? Problem.refusal("log.same-more", counts.get(cause)) : Problem.warning("log.same-more", counts.get(cause)))
                        .at("", problem.line(), problem.column()));
            }
        });
        return all;
    }
}
