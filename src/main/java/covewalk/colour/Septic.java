package covewalk.colour;

/** A polynomial of seventh degree. Fields, not an array: in registers, they take half the time. */
record Septic(double c0, double c1, double c2, double c3, double c4, double c5, double c6, double c7) {

    /** Number of terms. */
    static final int TERMS = 8;

    /** The terms that stand in {@code numbers} from {@code first} on, {@code stride} apart, lowest first. */
    static Septic read(double[] numbers, int first, int stride) {
        return new Septic(numbers[first], numbers[first + stride], numbers[first + 2 * stride],
                numbers[first + 3 * stride], numbers[first + 4 * stride], numbers[first + 5 * stride],
                numbers[first + 6 * stride], numbers[first + 7 * stride]);
    }

    /** This times {@code a} plus {@code q} times {@code b} minus {@code r}. */
    Septic blend(double a, Septic q, double b, Septic r) {
        return new Septic(a * c0 + b * q.c0 - r.c0, a * c1 + b * q.c1 - r.c1, a * c2 + b * q.c2 - r.c2,
                a * c3 + b * q.c3 - r.c3, a * c4 + b * q.c4 - r.c4, a * c5 + b * q.c5 - r.c5,
                a * c6 + b * q.c6 - r.c6, a * c7 + b * q.c7 - r.c7);
    }

    double value(double t) {
        double t2 = t * t;
        return (c0 + c1 * t) + t2 * ((c2 + c3 * t) + t2 * ((c4 + c5 * t) + t2 * (c6 + c7 * t)));
    }

    /** First derivative. */
    double slope(double t) {
        double t2 = t * t;
        return (c1 + 2 * c2 * t) + t2 * ((3 * c3 + 4 * c4 * t) + t2 * ((5 * c5 + 6 * c6 * t) + t2 * 7 * c7));
    }

    /** Half the second derivative. */
    double bend(double t) {
        double t2 = t * t;
        return (c2 + 3 * c3 * t) + t2 * ((6 * c4 + 10 * c5 * t) + t2 * (15 * c6 + 21 * c7 * t));
    }

    /** One step of Halley's method from 0. */
    double nearZero() {
        return c0 * c1 / (c0 * c2 - c1 * c1);
    }

    /** One step of Halley's method from {@code t} towards the zero; it leaves about the cube of the error. */
    double nearerToZero(double t) {
        double f = value(t);
        double f1 = slope(t);
        return t - f * f1 / (f1 * f1 - f * bend(t));
    }
}
