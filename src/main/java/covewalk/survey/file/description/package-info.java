/**
 * {@code survey.json}: read with the place of whatever is wrong in it, and written so that fields of others stay. Way in:
 * {@link covewalk.survey.file.description.DescriptionFile}.
 */
package covewalk.survey.file.description;
