/**
 * Colours of light, how far apart they are and how sure one is of that: chromaticities, correlated colour temperature
 * and Duv, steps. Ways in: {@link covewalk.colour.Xy}, {@link covewalk.colour.UvPrime} and
 * {@link covewalk.colour.CctDuv} for a colour, {@link covewalk.colour.ColourTemperature#of(Uv)} from chromaticity to
 * CCT and Duv, {@link covewalk.colour.StepPlane} for differences in steps.
 *
 * <p>Everything here is a value or a pure function of values, safe to use from any thread. It knows no survey, reads no
 * file of the user's and says nothing to the user; it needs the JDK alone.
 */
package covewalk.colour;
