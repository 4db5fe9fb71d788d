/**
 * {@code punch.csv}: what was done about each item, which is only ever added to. Way in:
 * {@link covewalk.survey.file.punch.PunchLog}.
 */
package covewalk.survey.file.punch;
