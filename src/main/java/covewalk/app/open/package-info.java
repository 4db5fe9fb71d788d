/**
 * The survey that is worked on: read from its folder, added to, judged again whenever it changes. Ways in:
 * {@link covewalk.app.open.Opener} and {@link covewalk.app.open.OpenSurvey}.
 * Three threads: the screen's, on which everything is told; one that writes files, in order; one that makes sums. Knows
 * no controls.
 */
package covewalk.app.open;
