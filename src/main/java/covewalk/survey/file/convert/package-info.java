/**
 * Adds to each row of a table of colours what it lacks of x, y, u', v', CCT and Duv. Way in:
 * {@link covewalk.survey.file.convert.TableConversion}. Reads and writes streams of any length in little memory, leaves
 * every cell of the input as it was typed, and says in words why a row could not be converted.
 * Takes the sums from {@code covewalk.colour} and the names of columns from {@code covewalk.survey.file.meter}. Knows
 * no survey and no folder.
 */
package covewalk.survey.file.convert;
