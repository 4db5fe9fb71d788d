package covewalk.report;

/** A label and what stands beside it. */
record Fact(String label, String text) {
}
