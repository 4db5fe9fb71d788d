package covewalk.app.report;

import covewalk.words.Language;
import java.nio.file.Path;

/**
 * How a report is to be, and where.
 *
 * @param feet whether lengths lead with feet and inches
 * @param folder to write into; made where it is missing
 */
record Choices(Language language, Paper paper, boolean feet, Path folder) {
}
