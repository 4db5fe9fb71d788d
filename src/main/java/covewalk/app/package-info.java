/**
 * The field app: a window with six places to go. Way in: {@link covewalk.app.Start}.
 * Each place has a package of its own, a view that lays out and a model without controls; what they share lies in
 * {@code desk}, {@code open}, {@code parts} and {@code text}. Knows no commands.
 */
package covewalk.app;
