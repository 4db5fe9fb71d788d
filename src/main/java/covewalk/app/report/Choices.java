package covewalk.app.report;

import covewalk.report.page.PageStyle;
import covewalk.report.Readership;
import covewalk.words.Language;
import java.nio.file.Path;

/**
 * How a report is to be, for whom, and where.
 *
 * @param folder to write into; made where it is missing
 */
record Choices(Language language, PageStyle style, Readership readers, Path folder) {
}
