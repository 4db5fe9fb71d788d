package covewalk.app.report;

import covewalk.report.PageStyle;
import covewalk.words.Language;
import java.nio.file.Path;

/**
 * How a report is to be, and where.
 *
 * @param folder to write into; made where it is missing
 */
record Choices(Language language, PageStyle style, Path folder) {
}
