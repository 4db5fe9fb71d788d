package covewalk.app.walk;

/**
 * Something about what was typed that looks like a slip.
 *
 * @param says what looks wrong, and what to do
 * @param refused whether it cannot be kept as it is; else Enter once more keeps it
 */
record Question(String says, boolean refused) {
}
