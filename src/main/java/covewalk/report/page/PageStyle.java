package covewalk.report.page;

import covewalk.words.LengthUnit;
import java.util.Objects;

/** How the pages of a report are laid out. */
public record PageStyle(Paper paper, LengthUnit lengths) {

    /** A4, positions in metres first. */
    public static final PageStyle USUAL = new PageStyle(Paper.A4, LengthUnit.M);

    public PageStyle {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(lengths, "lengths");
    }
}
