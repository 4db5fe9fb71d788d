package covewalk.survey.file.log;

/**
 * A row that could not be read.
 *
 * @param source the file it came from, without its folder
 * @param line its line there, from 1
 * @param column the column that stood in the way, or empty
 * @param reason what was wrong, in words
 * @param row the row as it was; {@link SetAside} writes it so that no spreadsheet runs it
 */
public record SetAsideRow(String source, int line, String column, String reason, String row) {
}
