/**
 * The pages as they are read, all of it in words, and their HTML: of the punch list,
 * {@link covewalk.report.page.PunchHtml}, and for one reader, {@link covewalk.report.page.SideHtml}. The pages are templates, made into
 * classes of this package when it is built. No clock time and no folder goes into a page: the same survey gives the same bytes.
 */
package covewalk.report.page;
