/**
 * Is a measured colour difference beyond a limit, within it, or can nobody say yet? Way in: {@link LimitTest}.
 * Works on plain vectors and covariances in the plane where one step is a circle. Knows no reel, no reading, no words.
 */
package covewalk.verdict.limit;
