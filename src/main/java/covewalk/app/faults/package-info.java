/** What was found, place by place, and what it rests on. Way in: {@code FaultsScreen}. */
package covewalk.app.faults;
