/**
 * Pictures as plain shapes in millimetres, each with what it says in words, so that one picture serves page and screen
 * and can be tested as text. Ways in: {@link covewalk.plot.Strip}, {@link covewalk.plot.Profile}, {@link covewalk.plot.UvDiagram} and
 * {@link covewalk.plot.VerdictMark} make a {@link covewalk.plot.Picture}, {@link covewalk.plot.Svg} writes one.
 * Paints on nothing itself; its captions come from the words.
 */
package covewalk.plot;
