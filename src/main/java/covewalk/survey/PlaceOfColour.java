package covewalk.survey;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.NoCct;
import java.util.List;

/** What is to be said of where a chromaticity lies, x and y or u' and v' alike. */
final class PlaceOfColour {

    private PlaceOfColour() {
    }

    /** Nothing for a usual white; a warning for an unusual one; a refusal for what is no light or has no CCT. */
    static List<Problem> problems(ColourTemperature temperature) {
        if (temperature instanceof NoCct none) {
            return List.of(Problem.refusal(switch (none) {
                case NO_REAL_COLOUR -> "colour.place.not-real";
                case TOO_FAR_FROM_LOCUS -> "colour.place.far";
                case BELOW_1000_K -> "colour.place.below";
                case ABOVE_20000_K -> "colour.place.above";
            }));
        }
        CctDuv found = (CctDuv) temperature;
        return UsualWhite.holds(found) ? List.of() : List.of(Problem.warning("colour.place.unusual",
                ColourDigits.cct(found.cctK()), ColourDigits.duv(found.duv())));
    }
}
