/**
 * The punch list and its evidence, on paper and as data. Ways in: {@link covewalk.report.Report} for the files of a
 * report, {@link covewalk.report.CheckTable} and {@link covewalk.report.CheckJson} for the verdicts alone.
 * Takes a judgement and writes it; it judges nothing. No clock time and no folder goes into a page: the same survey
 * gives the same bytes. The pages are templates, made into classes of this package when it is built.
 */
package covewalk.report;
