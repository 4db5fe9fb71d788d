/**
 * From the file a handheld meter exports to readings in a survey's log. Way in: {@link covewalk.survey.file.meter.MeterImport}.
 * Reads any of the usual encodings, separators, decimal marks and header names, and sets aside, with a reason, each row
 * that it cannot read; no row is ever lost, which an independent count checks. {@link covewalk.survey.file.meter.HeaderTable}
 * knows the trade's names for columns and serves other readers of tables too.
 * Judges no colour and writes only through the survey's folder. Guesses at nothing: where a file leaves a question
 * open, the question goes to the user.
 */
package covewalk.survey.file.meter;
