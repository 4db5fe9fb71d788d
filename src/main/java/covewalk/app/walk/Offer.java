package covewalk.app.walk;

/**
 * Something that may be done next, as a button with its reason.
 *
 * @param id of the button
 * @param button what it does
 */
record Offer(String id, String button, Runnable take) {
}
