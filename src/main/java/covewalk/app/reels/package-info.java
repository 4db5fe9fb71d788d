/** Every label, where its reel lies and what was measured of it. Way in: {@code ReelsScreen}. */
package covewalk.app.reels;
