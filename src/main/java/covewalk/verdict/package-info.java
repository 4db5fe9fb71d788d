/**
 * From the readings of a survey to its faults, and how sure one may be of each. Way in: {@link covewalk.verdict.Judge}.
 * Takes records of survey and colour. Opens no file, draws nothing, chooses no words.
 * The rooms inside: {@code limit} tests a difference against a limit, {@code stretch} turns readings into stretches of
 * one colour, {@code evidence} finds what weakens the readings and corrects what may be corrected,
 * {@code claim} sets what was measured beside what the labels claim, {@code plan} says where to read.
 */
package covewalk.verdict;
