package covewalk.survey;

/** Where a cove is fed with power, m from its datum, and from which driver and circuit. */
public record Feed(double atM, String driver, String circuit) {
}
