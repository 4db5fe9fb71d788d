/**
 * What every place of the app works with: the open survey, where one is, the settings. Way in: {@link covewalk.app.desk.Desk}.
 * Knows no place in particular, and no controls but the node that a {@link covewalk.app.desk.Screen} shows.
 */
package covewalk.app.desk;
