package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import covewalk.report.Readership.Reader;
import covewalk.report.punch.Sample;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadershipTest {

    private final Survey survey = Sample.judgement().survey()
            .withReels(List.of(reel("R1", "S1"), reel("R2", "S2"), reel("R3", "S2"), reel("S1", ""), reel("a7", "Q-4"), reel("A7", "q-4b"), reel("B2", "b3"), reel("B3", "")));

    private static Reel reel(String id, String serial) {
        return new Reel(id, "", "", "", OptionalInt.empty(), "", "", serial, "", "", OptionalDouble.empty(), OptionalDouble.empty(),
                Optional.empty());
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        R1 | R1    | an id
        S2 | R2 R3 | a serial that two reels have: somebody has to say which
        S1 | S1    | an id goes before a serial
        r2 | R2    | one alone, where capitals do not count
        s2 | R2 R3 | by serial too
        q-4 | a7   | a serial in other capitals
        a7 | a7    | as it is written goes first
        b3 | B2    | so it does by serial
        B3 | B3    | and by id
        R9 | ''    | nobody has it
        '' | ''    | nothing named, though one reel has no serial
        """)
    void aReelIsFoundByIdBeforeSerial(String name, String found, String why) {
        assertEquals(found, String.join(" ", Readership.reelsNamed(name, survey).stream().map(Reel::id).toList()));
    }

    @Test
    void aReelGoesWithTheDossierAndWithNothingElse() {
        assertThrows(IllegalArgumentException.class, () -> new Readership(Reader.WARRANTY, Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new Readership(Reader.SPECIFIER, Optional.of(reel("R1", ""))));
    }
}
