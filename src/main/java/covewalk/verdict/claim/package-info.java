/**
 * What the labels claim, set beside what was measured: whether a reel is shown to lie within its claim, whether in the
 * quadrangle of its nominal CCT, and what two claims allow between neighbours. Way in: {@link covewalk.verdict.claim.Claims}.
 * Takes stretches and labels. Says nothing of whose doing a difference is, and chooses no words.
 */
package covewalk.verdict.claim;
