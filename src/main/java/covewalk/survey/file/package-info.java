/**
 * A survey's folder: the description, the reading log, what was set aside, the imported files, the lock and the seals.
 * Ways in: {@link covewalk.survey.file.SurveyFolder} reads and saves, {@link covewalk.survey.file.log.ReadingLog} adds
 * readings, {@link covewalk.survey.file.punch.PunchLog} what is recorded of items, {@link covewalk.survey.file.seal.Seal} seals what
 * was reported, and {@link covewalk.survey.file.seal.SealCheck} tells what became of it.
 * Takes the records of {@code covewalk.survey}; only here are JSON and CSV libraries used. Judges no colour, knows no
 * screen. What is wrong in a file comes back as {@link covewalk.survey.Problem}s; an {@code IOException} means that
 * the disk failed.
 */
package covewalk.survey.file;
