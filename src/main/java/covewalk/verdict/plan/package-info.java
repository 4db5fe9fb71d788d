/**
 * Where to read and how often, before anybody climbs: enough that differences a step off the limit are settled. Way in:
 * {@link covewalk.verdict.plan.WalkPlan}. Takes a judged survey, which may have no readings yet. Chooses no words.
 */
package covewalk.verdict.plan;
