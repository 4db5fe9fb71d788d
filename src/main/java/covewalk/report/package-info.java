/**
 * The files of a report: {@link covewalk.report.Edition} writes them for their reader, {@link covewalk.report.Issue} numbers and
 * seals before that. What stands in them comes from the packages below: {@code punch} for the list itself, {@code text} and
 * {@code data} for terminals and programs, {@code page} and {@code pdf} for paper. Takes a judgement and writes it; it judges nothing.
 */
package covewalk.report;
