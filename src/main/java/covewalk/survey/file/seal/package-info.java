/**
 * {@code seal.json}: what the files of a survey were when a report was made of them. Ways in:
 * {@link covewalk.survey.file.seal.Seal} and {@link covewalk.survey.file.seal.SealCheck}.
 */
package covewalk.survey.file.seal;
