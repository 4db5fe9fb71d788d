/** The walk along the coves, reading by reading. Way in: {@code WalkScreen}. */
package covewalk.app.walk;
