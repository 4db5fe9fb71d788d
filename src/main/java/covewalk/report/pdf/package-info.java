/**
 * PDF from that HTML: laid out, headed, bookmarked and tagged. Ways in: {@link covewalk.report.pdf.PunchPdf} and
 * {@link covewalk.report.pdf.SidePdf}. Every letter is of a type that is embedded; what none of them has is told.
 */
package covewalk.report.pdf;
