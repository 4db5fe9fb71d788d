package covewalk.survey.file.meter;

/**
 * A column whose meaning is known.
 *
 * @param index its place in the row, from 0
 * @param title its title as written
 * @param unit what its numbers are in, {@link MeterUnit#NONE} where nobody said
 */
record Column(int index, String title, MeterField field, MeterUnit unit) {
}
