package covewalk.survey.file.convert;

import covewalk.survey.Problem;
import java.util.Optional;

/**
 * What came of a conversion.
 *
 * @param rows how many rows of colours were read, with the problem rows
 * @param problems how many of them say in their column {@code problem} why something is missing
 * @param refusal why the table could not be converted at all, or not to its end
 */
public record ConvertResult(long rows, long problems, Optional<Problem> refusal) {

    ConvertResult plus(long moreRows, long moreProblems) {
        return new ConvertResult(rows + moreRows, problems + moreProblems, refusal);
    }
}
