package covewalk.verdict.stretch;

import covewalk.colour.UvPrime;
import covewalk.survey.Reading;

/** The colour by which a reading is judged. What was typed stays in the reading; a correction lives in here. */
@FunctionalInterface
public interface ColourOf {

    /** As it was typed. */
    ColourOf AS_TYPED = reading -> reading.colour().orElseThrow().toUvPrime();

    /** @param reading one that has a colour */
    UvPrime of(Reading reading);
}
