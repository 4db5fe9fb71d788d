/**
 * What weakens the evidence of the readings, and what of it may be corrected: drift of meter or light as the reference
 * spot shows it, light that is there with the cove off. Way in: {@link covewalk.verdict.evidence.Evidence}. Readings
 * stay as typed; a correction is a {@link covewalk.verdict.stretch.ColourOf}. Judges nothing and chooses no words.
 */
package covewalk.verdict.evidence;
