package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.survey.Cove;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import covewalk.survey.Role;
import covewalk.survey.Survey;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedColourCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may be a slip of the fingers, or of the eye, in what was typed. The worst stands first. */
final class Slips {

    /** Nominal whites reach some 6 % from their name (ANSI C78.377, from memory); farther looks like another digit. */
    private static final double FAR_FROM_LABEL = 0.1;

    private final Survey survey;
    private final Texts texts;
    private final List<Question> found = new ArrayList<>();

    Slips(Survey survey, Texts texts) {
        this.survey = survey;
        this.texts = texts;
    }

    List<Question> of(Entry entry, Aim aim) {
        found.clear();
        Optional<TypedColour> colour = entry.colour();
        if (colour.isEmpty()) {
            refuse(texts.get("slip.no-number", entry.meter().pair().first(), entry.meter().pair().second()));
            return found;
        }
        checkColour(colour.get(), aim);
        checkLux(entry, aim);
        boolean unusual = !found.isEmpty();
        entry.oddDigits().ifPresent(field -> checkDigits(entry, field));
        if (entry.lacksSign()) {
            ask(texts.get("slip.sign"));
        }
        if (!unusual && aim.role() != Role.DARK) {
            checkLabel(colour.get(), aim);
        }
        return List.copyOf(found);
    }

    /** Coarse digits are the meter's way, and told where its digits are chosen. A dark reading may be of any colour. */
    private void checkColour(TypedColour colour, Aim aim) {
        for (Problem problem : TypedColourCheck.problems(colour)) {
            boolean place = problem.key().startsWith("colour.place.");
            boolean counts = aim.role() != Role.DARK || problem.refused() && !place;
            if (counts && !problem.key().startsWith("colour.coarse.")) {
                found.add(new Question(problem.sentence(texts.locale()), problem.refused()));
            }
        }
    }

    private void checkLux(Entry entry, Aim aim) {
        boolean typed = !entry.lux().get().isEmpty();
        boolean number = entry.luxTyped().filter(lux -> lux.value() >= 0).isPresent();
        if (typed && !number) {
            refuse(texts.get("slip.lux", entry.lux().get()));
        } else if (!typed && aim.role() == Role.DARK) {
            ask(texts.get("slip.dark-lux"));
        }
    }

    private void checkDigits(Entry entry, Entry.Field field) {
        boolean one = field == Entry.Field.FIRST;
        MeterShows meter = entry.meter();
        String typed = one ? entry.first().get() : entry.second().get();
        ask(texts.get("slip.digits", meter.name(field), typed.replace(".", texts.numbers().plain(0.5, 1).substring(1, 2))));
    }

    private void checkLabel(TypedColour colour, Aim aim) {
        Optional<Reel> reel = survey.cove(aim.cove()).flatMap((Cove cove) -> cove.placementAt(aim.atM()))
                .flatMap(placement -> survey.reel(placement.reel()));
        if (reel.isPresent() && reel.get().nominalCct().isPresent()
                && ColourTemperature.of(colour.toUvPrime()) instanceof CctDuv white) {
            double label = reel.get().nominalCct().getAsInt();
            if (Math.abs(white.cctK() / label - 1) > FAR_FROM_LABEL) {
                ask(texts.get("slip.label", texts.numbers().fixed(white.cctK(), 0), reel.get().id(), texts.numbers().fixed(label, 0)));
            }
        }
    }

    private void ask(String says) {
        found.add(new Question(says, false));
    }

    private void refuse(String says) {
        found.add(new Question(says, true));
    }
}
