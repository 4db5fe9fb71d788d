/**
 * The punch list: which faults are items, their numbers that stay, their order, what was found at each place before, and the
 * sentences of an item. Way in: {@link covewalk.report.punch.PunchList}, from an {@link covewalk.report.punch.Audit}.
 * Nothing is laid out here.
 */
package covewalk.report.punch;
