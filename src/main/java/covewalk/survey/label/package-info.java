/**
 * What a scanner reads off a reel's label: GS1 element strings and GS1 Digital Links; anything else stays text. Way in:
 * {@link covewalk.survey.label.Scanned}. Needs no library and opens no link.
 */
package covewalk.survey.label;
