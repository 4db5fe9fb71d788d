/**
 * The same for other programs: JSON and CSV, with a decimal point whatever the language. Ways in: the classes named for what
 * they write. Jackson and opencsv are used here alone of all the report.
 */
package covewalk.report.data;
