package covewalk.survey.file.seal;

/**
 * One file as it was when a report was issued.
 *
 * @param name its name in the survey's folder, folders parted by {@code /}
 * @param length how many bytes of it are sealed: of a log the whole rows there were then, of others all
 * @param sha256 SHA-256 of these bytes, in hexadecimal
 */
record SealedFile(String name, long length, String sha256) {
}
