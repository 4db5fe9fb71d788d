/**
 * From readings to stations, and from stations to stretches of one colour or one steady drift, with the noise of each.
 * Way in: {@link covewalk.verdict.stretch.Stretches}. Knows no limit and judges nothing.
 */
package covewalk.verdict.stretch;
