package covewalk.verdict;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.SdcmEllipse;
import covewalk.colour.StepRule;
import covewalk.survey.Cove;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What bears on the evidence. */
final class Notes {

    /** A brightness step that is worth a word: lux differing by more than a tenth (common practice, no source). */
    private static final double BRIGHTNESS_STEP = 1.1;

    private Notes() {
    }

    static List<Note> of(Comparison comparison) {
        List<Note> notes = new ArrayList<>();
        if (comparison.from().readings() == 1 || comparison.to().readings() == 1) {
            notes.add(Note.of(Note.Kind.RESTS_ON_DECLARED));
        }
        double digits = comparison.along(comparison.from().common().plus(comparison.to().common()));
        if (digits > 0) {
            notes.add(Note.of(Note.Kind.COARSE_DIGITS, twoDecimals(Math.sqrt(digits))));
        }
        comparison.luxRatio().ifPresent(ratio -> {
            if (ratio > BRIGHTNESS_STEP || ratio < 1 / BRIGHTNESS_STEP) {
                notes.add(Note.of(Note.Kind.BRIGHTNESS_STEP, twoDecimals(ratio)));
            }
        });
        return notes;
    }

    static List<Note> of(Survey survey) {
        List<Note> notes = new ArrayList<>();
        if (!survey.setUps().stream().allMatch(SetUp::declared)) {
            notes.add(Note.of(Note.Kind.ASSUMED_METER));
        }
        if (survey.limits().stepRule() == StepRule.ELLIPSE) {
            survey.coves().forEach(cove -> addFarStandardColour(cove, notes));
        }
        return notes;
    }

    private static void addFarStandardColour(Cove cove, List<Note> notes) {
        cove.target().ifPresent(target -> {
            if (ColourTemperature.of(target.toUvPrime()) instanceof CctDuv white) {
                SdcmEllipse nearest = SdcmEllipse.nearest(white.cctK());
                if (nearest.farFrom(white.cctK())) {
                    notes.add(Note.of(Note.Kind.FAR_STANDARD_COLOUR, cove.id(), nearest.colour(),
                            String.format(Locale.ROOT, "%.0f", nearest.cctK())));
                }
            }
        });
    }

    private static String twoDecimals(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }
}
