package covewalk.survey.label;

/**
 * One element of a code.
 *
 * @param ai the application identifier that says what it is about, such as {@code 21}
 * @param data what it says
 */
public record Element(String ai, String data) {
}
