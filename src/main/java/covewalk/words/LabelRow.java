package covewalk.words;

/**
 * One line of two labels side by side.
 *
 * @param field its name, in words
 * @param before what the label on the datum's side says, or that it is not noted
 * @param after what the label on the far side says
 * @param differs whether both are noted and say different things that reels of one lot would share
 */
public record LabelRow(String field, String before, String after, boolean differs) {
}
