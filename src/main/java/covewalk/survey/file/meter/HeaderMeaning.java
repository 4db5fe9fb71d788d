package covewalk.survey.file.meter;

/**
 * What a column's title says.
 *
 * @param unit the unit its numbers are in, where the title or the table says so; else {@link MeterUnit#NONE}
 */
record HeaderMeaning(MeterField field, MeterUnit unit) {
}
