package covewalk.survey.file.seal;

import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.Sha256;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The seal of one report: the files of the survey as they were. It holds no clock time, so the same survey gives the
 * same seal.
 *
 * @param files sorted by name
 */
record SealEntry(List<SealedFile> files) {

    /** Crockford's base 32: digits and capitals without I, L, O and U, which are misread from paper. */
    private static final String DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LETTERS = 16;
    private static final int BITS_A_LETTER = 5;
    private static final int GROUP = 4;

    SealEntry {
        files = files.stream().sorted(Comparator.comparing(SealedFile::name)).toList();
    }

    /** What is printed beside a signature: the first 80 bits of SHA-256 over {@link #canonical()}, in groups of four. */
    String code() {
        byte[] hash = Sha256.of(CsvText.bytes(canonical()));
        StringBuilder code = new StringBuilder();
        for (int letter = 0; letter < LETTERS; letter++) {
            code.append(letter > 0 && letter % GROUP == 0 ? "-" : "").append(DIGITS.charAt(bits(hash, letter * BITS_A_LETTER)));
        }
        return code.toString();
    }

    /**
     * The code that somebody typed from paper: small letters, spaces and hyphens do not matter, and O, I and L, which no
     * code holds, are taken for the digits they look like. Empty where it is no code.
     */
    static Optional<String> codeTyped(String typed) {
        String letters = typed.toUpperCase(Locale.ROOT).replaceAll("[\\s\\p{Pd}\\p{Zs}]", "").replace('O', '0').replace('I', '1').replace('L', '1');
        boolean code = letters.length() == LETTERS && letters.chars().allMatch(letter -> DIGITS.indexOf(letter) >= 0);
        return code ? Optional.of(String.join("-", letters.split("(?<=\\G.{" + GROUP + "})"))) : Optional.empty();
    }

    private static int bits(byte[] hash, int from) {
        int two = (hash[from / 8] & 0xff) << 8 | hash[from / 8 + 1] & 0xff;
        return two >> 11 - from % 8 & 0x1f;
    }

    /** A line for each file: hash, length, name. */
    String canonical() {
        StringBuilder lines = new StringBuilder();
        files.forEach(file -> lines.append(file.sha256()).append(' ').append(file.length()).append(' ')
                .append(file.name()).append('\n'));
        return lines.toString();
    }
}
