package covewalk.verdict.stretch;

/** Parts being added up, station by station. */
final class PartsSum {

    private final CovarianceSum repeatability = new CovarianceSum();
    private final CovarianceSum scatter = new CovarianceSum();
    private final CovarianceSum digits = new CovarianceSum();
    private final CovarianceSum found = new CovarianceSum();

    void add(Parts parts, double factor) {
        repeatability.add(parts.repeatability(), factor);
        scatter.add(parts.scatter(), factor);
        digits.add(parts.digits(), factor);
        found.add(parts.found(), factor);
    }

    Parts times(double factor) {
        return new Parts(repeatability.times(factor), scatter.times(factor), digits.times(factor), found.times(factor));
    }
}
