package covewalk.report;

import covewalk.survey.file.seal.FileChange;
import covewalk.survey.file.seal.Verified;
import covewalk.words.Words;

/** What became of a sealed survey, in words. */
public final class VerifiedWords {

    private final Words words;

    public VerifiedWords(Words words) {
        this.words = words;
    }

    /** What came of it, by the code that was asked about or by the last seal. */
    public String result(Verified verified) {
        return words.text(switch (verified.result()) {
            case UNCHANGED -> "verified.unchanged";
            case ADDED -> "verified.added";
            case CHANGED -> "verified.changed";
        }, verified.code());
    }

    /** The same of a seal before the last one. */
    public String earlier(Verified seal) {
        return words.text(switch (seal.result()) {
            case UNCHANGED -> "verified.earlier.unchanged";
            case ADDED -> "verified.earlier.added";
            case CHANGED -> seal.logChanged() ? "verified.earlier.log-changed" : "verified.earlier.changed";
        }, seal.code());
    }

    /** What became of one file. */
    public String change(FileChange change) {
        return switch (change.kind()) {
            case CHANGED -> words.text("verified.file.changed", change.file());
            case MISSING -> words.text("verified.file.missing", change.file());
            case ADDED -> words.text("verified.file.added", change.file());
            case ROWS_ADDED -> words.text("verified.file.rows", change.file(), words.numbers().fixed(change.rows(), 0));
        };
    }

    /** What only the code on paper can show. */
    public String ownSeals() {
        return words.text("verified.own-seals");
    }
}
