package covewalk.report.page;

/** A label and what stands beside it. */
public record Fact(String label, String text) {
}
