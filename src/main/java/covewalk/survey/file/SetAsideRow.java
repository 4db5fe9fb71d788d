package covewalk.survey.file;

/**
 * A row that could not be read.
 *
 * @param source the file it came from, without its folder
 * @param line its line there, from 1
 * @param column the column that stood in the way, or empty
 * @param reason what was wrong, in words
 * @param row the row as it was
 */
public record SetAsideRow(String source, int line, String column, String reason, String row) {
}
