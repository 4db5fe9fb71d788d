/**
 * Tables for people who read a terminal, and the explanation of one place, which the pages use too. Ways in:
 * {@link covewalk.report.text.CheckTable}, {@link covewalk.report.text.PlanTable}, {@link covewalk.report.text.StateTable},
 * {@link covewalk.report.text.Explanation}. Lines are at most 100 characters long.
 */
package covewalk.report.text;
