package covewalk.colour;

/**
 * What a chromaticity comes to on the scale of correlated colour temperature: a {@link CctDuv}, or the reason why it
 * has none.
 */
public sealed interface ColourTemperature permits CctDuv, NoCct {

    /**
     * CCT and Duv of a colour: the temperature of the point of the Planckian locus nearest to it in the CIE 1960
     * diagram, and the distance from that point (CIE 15; sign as in ANSI C78.377). Exact to 1e-9 of the CCT and 1e-12
     * of Duv.
     */
    static ColourTemperature of(Uv uv) {
        return PlanckianLocus.temperature(uv.u(), uv.v());
    }

    /** As {@link #of(Uv)}. */
    static ColourTemperature of(UvPrime colour) {
        return PlanckianLocus.temperature(colour.u(), colour.v() / 1.5);
    }

    /** As {@link #of(Uv)}. */
    static ColourTemperature of(Xy xy) {
        return of(xy.toUv());
    }
}
