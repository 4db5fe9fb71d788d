package covewalk.report.pdf;

/**
 * Where a bookmark of a PDF leads.
 *
 * @param top whether it heads a section, not a part of one
 * @param page from 0, within its run of pages
 * @param y of its upper edge, points from the foot of the page
 */
record PdfHeading(boolean top, String text, int page, float y) {

    PdfHeading after(int pages) {
        return new PdfHeading(top, text, page + pages, y);
    }
}
