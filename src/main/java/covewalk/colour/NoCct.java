package covewalk.colour;

/** Why a chromaticity has no correlated colour temperature here; where several hold, the first of them. */
public enum NoCct implements ColourTemperature {

    /** It lies outside the spectral locus: no light has it, so it was misread or mistyped. */
    NO_REAL_COLOUR,

    /** Its distance from the Planckian locus exceeds {@link CctDuv#MAX_DUV}; CIE 15 gives CCT no meaning there. */
    TOO_FAR_FROM_LOCUS,

    /** It is redder than a black body of {@link CctDuv#MIN_CCT_K}. */
    BELOW_1000_K,

    /** It is bluer than a black body of {@link CctDuv#MAX_CCT_K}. */
    ABOVE_20000_K
}
