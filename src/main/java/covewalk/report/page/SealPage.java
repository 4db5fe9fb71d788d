package covewalk.report.page;

import covewalk.report.punch.Audit;
import covewalk.survey.file.seal.SealRecord;
import covewalk.words.Words;
import java.util.List;

/**
 * The seal as it is printed, over the lines for signatures.
 *
 * @param code empty where the survey is not sealed
 * @param says what the code is for, or that there is none
 * @param files rows of name, bytes and SHA-256
 */
record SealPage(String code, String says, List<List<String>> files) {

    static SealPage of(Audit audit, Words words) {
        return audit.seal().map(seal -> new SealPage(seal.code(), words.text("page.seal", seal.code()), files(seal, words)))
                .orElseGet(() -> new SealPage("", words.text("page.not-sealed"), List.of()));
    }

    private static List<List<String>> files(SealRecord seal, Words words) {
        return seal.files().stream().map(file -> List.of(file.name(), words.numbers().fixed(file.length(), 0), file.sha256())).toList();
    }
}
