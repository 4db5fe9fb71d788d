/** What goes on paper, who signs, and where it is written to. Way in: {@code ReportScreen}. */
package covewalk.app.report;
