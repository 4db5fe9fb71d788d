package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.verdict.Note;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What weakens the evidence, word for word. */
class EvidenceWordsTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # note                   | details                     | sentence
        REFERENCE_DRIFT          | A;C1;2.00;1.52;45;warmer    | Set-up A: the reference spot at 2.00 m in cove C1 drifted by 1.52 steps (of 0.0011 in u'v') in 45 minutes, towards warmer: more than chance and twice the repeatability. Meter or light is drifting.
        REFERENCE_DRIFT_BY_ORDER | A;C1;2.00;1.52;warmer       | Set-up A: the reference spot at 2.00 m in cove C1 drifted by 1.52 steps (of 0.0011 in u'v') over the walk, towards warmer: more than chance and twice the repeatability. Readings there lack a time, so they were taken in the order of the log, and nothing can be corrected.
        DRIFT_NOT_SEEN           | A                           | Set-up A: drift of meter or light cannot be seen. Read one reference spot at the start, now and then, and at the end: three visits or more.
        DRIFT_CORRECTABLE        | A                           | Set-up A: this drift can be taken off: in the window, and by check, punch and report with --correct-drift.
        DRIFT_CORRECTED          | A;36;4.51;90;0.31;2         | Set-up A: 36 readings were corrected for drift, linearly in time: 4.51 steps (of 0.0011 in u'v') in 90 minutes, standard uncertainty 0.31. Without a time and not corrected: 2. The readings stay as typed.
        DRIFT_NOT_CORRECTED      | A                           | Set-up A: no drift was corrected, since no reference spot with times shows one.
        DARK_SUBTRACTED          | A;12;1.25                   | Set-up A: light left with the cove off, up to 1.25 % of the lux, was subtracted from 12 readings as tristimulus values. The readings stay as typed.
        DARK_SWAMPS              | A;2                         | Set-up A: at 2 readings half of the light or more was there with the cove off. Nothing was subtracted; read again in the dark.
        DARK_WITHOUT_LUX         | A;2                         | Set-up A: at 2 readings light left with the cove off cannot be judged: lux is missing, of the dark reading or of the lit one.
        BELOW_RANGE              | A;3;5.0                     | Set-up A: 3 readings have less than the 5 lx that the meter needs. Their digits may look fine and be wrong.
        WARM_UP_UNKNOWN          | -                           | How long the light had been on was not noted: LED light changes its colour while it warms up.
        SEVERAL_SETUPS           | C1                          | Cove C1 was read with more than one set-up. Only readings of one set-up are compared.
        NOISIER_THAN_DECLARED    | A;0.55;0.27                 | Set-up A: repeated readings vary by 0.55 steps (of 0.0011 in u'v'), more than the 0.27 stated for the meter. Verdicts rest on what they show.
        QUIETER_THAN_DECLARED    | A;0.09;0.27                 | Set-up A: repeated readings vary by 0.09 steps (of 0.0011 in u'v'), less than the 0.27 stated for the meter. Lift and replace the meter between readings, or the scatter is flattered.
        """, quoteCharacter = '~')
    void saysWhatWeakensTheEvidence(Note.Kind kind, String details, String sentence) {
        assertEquals(sentence, new NoteWords(Words.english()).sentence(new Note(kind, List.of(details.split(";")))));
    }
}
