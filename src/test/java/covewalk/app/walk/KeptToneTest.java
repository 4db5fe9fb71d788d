package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class KeptToneTest {

    private static int sample(byte[] samples, int i) {
        return samples[2 * i + 1] << 8 | samples[2 * i] & 0xFF;
    }

    @Test
    void swellsAndFadesSoThatItDoesNotClick() {
        byte[] samples = KeptTone.samples();
        int count = samples.length / 2;
        int loudest = IntStream.range(0, count).map(i -> Math.abs(sample(samples, i))).max().orElseThrow();
        assertEquals(0, sample(samples, 0));
        assertTrue(Math.abs(sample(samples, count - 1)) < loudest / 50);
        assertTrue(loudest > 8000 && loudest < 16000, "loudest " + loudest);
    }
}
