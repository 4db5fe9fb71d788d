package covewalk.survey;

/**
 * Whether there is nothing to say of a colour as typed, told at once: a usual white, in one pair, with digits enough. Nearly
 * all readings are such, and a log may hold a million; only what is not is gone through check by check.
 */
final class PlainWhite {

    private PlainWhite() {
    }

    static boolean is(TypedColour colour) {
        if (CoarseDigits.are(colour)) {
            return false;
        }
        if (colour.cctDuv().isPresent()) {
            return colour.xy().isEmpty() && colour.uvPrime().isEmpty() && CctDuvCheck.isUsual(colour.cctDuv().get());
        }
        if (colour.xy().isPresent()) {
            TypedPair pair = colour.xy().get();
            return colour.uvPrime().isEmpty() && UsualWhite.asXy(pair.first().value(), pair.second().value());
        }
        TypedPair pair = colour.uvPrime().orElseThrow();
        return UsualWhite.asUvPrime(pair.first().value(), pair.second().value());
    }
}
