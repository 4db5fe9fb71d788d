package covewalk.app.walk;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** A short tone: a reading is on disk. Nobody waits for it, and where there is no loudspeaker it stays silent. */
final class KeptTone {

    private static final float RATE = 22_050;
    private static final double HERTZ = 1320;
    private static final double SECONDS = 0.09;
    private static final double LOUDNESS = 0.35;

    private final ExecutorService player = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "tone");
        thread.setDaemon(true);
        return thread;
    });

    /** Sounds once this and all before it are over. */
    void sound() {
        player.execute(KeptTone::play);
    }

    private static void play() {
        AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
        byte[] samples = samples();
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            line.open(format);
            line.start();
            line.write(samples, 0, samples.length);
            line.drain();
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException silent) {
            // no loudspeaker, or another program holds it: the word on the screen says the same
        }
    }

    /** A sine that swells and fades, so that it does not click. */
    static byte[] samples() {
        int count = (int) (RATE * SECONDS);
        byte[] samples = new byte[2 * count];
        for (int i = 0; i < count; i++) {
            double swell = Math.sin(Math.PI * i / count);
            short sample = (short) Math.round(Short.MAX_VALUE * LOUDNESS * swell * Math.sin(2 * Math.PI * HERTZ * i / RATE));
            samples[2 * i] = (byte) sample;
            samples[2 * i + 1] = (byte) (sample >> 8);
        }
        return samples;
    }
}
