package covewalk.app.surveys;

import java.nio.file.Path;

/**
 * A survey that was open on this computer before.
 *
 * @param folder where it lies
 * @param name of the site; the folder's name as long as nothing else is known
 * @param says what it still lacks, or why it cannot be looked at; one line
 * @param there whether it can be opened, as far as is known
 */
record KnownSurvey(Path folder, String name, String says, boolean there) {
}
