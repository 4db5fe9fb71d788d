package covewalk.survey.file;

/**
 * An imported file as it is kept.
 *
 * @param name its name in {@code originals/}
 * @param sha256 SHA-256 of its bytes, in hexadecimal
 * @param wasThere whether the same bytes were kept before, perhaps under another name
 */
public record Original(String name, String sha256, boolean wasThere) {
}
