package covewalk.survey;

import covewalk.colour.CctDuv;
import covewalk.colour.Covariance;
import covewalk.colour.Jacobian;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import java.util.Objects;
import java.util.Optional;

/**
 * The colour of a reading, in the pairs a meter gave, with the digits as typed. Where there are several, x and y count,
 * then u' and v', then CCT and Duv.
 *
 * @param cctDuv CCT in K, and Duv
 * @param xy CIE 1931 x and y
 * @param uvPrime CIE 1976 u' and v'
 */
public record TypedColour(Optional<TypedPair> cctDuv, Optional<TypedPair> xy, Optional<TypedPair> uvPrime) {

    private static final Jacobian AS_IT_IS = new Jacobian(1, 0, 0, 1);

    public TypedColour {
        Objects.requireNonNull(cctDuv, "cctDuv");
        Objects.requireNonNull(xy, "xy");
        Objects.requireNonNull(uvPrime, "uvPrime");
        if (cctDuv.isEmpty() && xy.isEmpty() && uvPrime.isEmpty()) {
            throw new IllegalArgumentException("a colour needs one of the pairs CCT and Duv, x and y, u' and v'");
        }
    }

    public static TypedColour ofCctDuv(Typed cctK, Typed duv) {
        return new TypedColour(Optional.of(new TypedPair(cctK, duv)), Optional.empty(), Optional.empty());
    }

    public static TypedColour ofXy(Typed x, Typed y) {
        return new TypedColour(Optional.empty(), Optional.of(new TypedPair(x, y)), Optional.empty());
    }

    public static TypedColour ofUvPrime(Typed u, Typed v) {
        return new TypedColour(Optional.empty(), Optional.empty(), Optional.of(new TypedPair(u, v)));
    }

    /**
     * The colour by the pair that counts.
     *
     * @throws IllegalArgumentException where the numbers are no colour; {@link TypedColourCheck} finds that out first
     */
    public UvPrime toUvPrime() {
        if (xy.isPresent()) {
            return xyOf(xy.get()).toUvPrime();
        }
        return uvPrime.isPresent() ? uvPrimeOf(uvPrime.get()) : cctDuvOf(cctDuv.orElseThrow()).toUvPrime();
    }

    /**
     * What the digits typed leave open: half a unit of the last digit either way, uniform (GUM 4.3.7), carried into
     * u', v' by the Jacobian of the conversion.
     */
    public Covariance digits() {
        TypedPair pair = counting();
        Covariance asTyped = new Covariance(uniform(pair.first()), 0, uniform(pair.second()));
        return jacobian().carry(asTyped);
    }

    private TypedPair counting() {
        if (xy.isPresent()) {
            return xy.get();
        }
        return uvPrime.isPresent() ? uvPrime.get() : cctDuv.orElseThrow();
    }

    private Jacobian jacobian() {
        if (xy.isPresent()) {
            return xyOf(xy.get()).jacobianToUvPrime();
        }
        return uvPrime.isPresent() ? AS_IT_IS : cctDuvOf(cctDuv.orElseThrow()).jacobianToUvPrime();
    }

    private static double uniform(Typed number) {
        double half = number.resolution() / 2;
        return half * half / 3;
    }

    static Xy xyOf(TypedPair pair) {
        return new Xy(pair.first().value(), pair.second().value());
    }

    static UvPrime uvPrimeOf(TypedPair pair) {
        return new UvPrime(pair.first().value(), pair.second().value());
    }

    static CctDuv cctDuvOf(TypedPair pair) {
        return new CctDuv(pair.first().value(), pair.second().value());
    }
}
