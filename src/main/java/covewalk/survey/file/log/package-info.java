/**
 * {@code readings.csv}, which is only ever added to, and {@code set-aside.csv} for rows that cannot be taken. Way in:
 * {@link covewalk.survey.file.log.ReadingLog}; a reading is kept once its row is on disk, and not before.
 */
package covewalk.survey.file.log;
