/**
 * What the product says, as sentences: verdicts, faults, suspicions, cautions, labels, positions and rules, from one
 * bundle for all of screen, paper and command line. Way in: {@link covewalk.words.Words}.
 * Neutral in tone: it says what was measured and by whose limit, and blames nobody. Knows no page and no screen.
 */
package covewalk.words;
