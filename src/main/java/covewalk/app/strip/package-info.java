/**
 * A cove drawn along its length, with its colours amplified, and beside it the same in the u', v' diagram and as steps
 * against position. Ways in: {@link covewalk.app.strip.StripView} and {@link covewalk.app.strip.DiagramsView}, for every
 * place that shows a cove. What is pointed at is put into words; what is tapped is looked at in all places.
 */
package covewalk.app.strip;
