package covewalk.colour;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/** Numbers that ship beside this class as they are held in memory: reading a thousand as text takes 30 ms at a cold start. */
final class StoredNumbers {

    private StoredNumbers() {
    }

    /** All of them, in order; the file holds big-endian doubles and nothing else. */
    static double[] read(String name) {
        try (InputStream resource = StoredNumbers.class.getResourceAsStream(name)) {
            if (resource == null) {
                throw new IllegalStateException("this copy is incomplete: " + name + " is missing from it");
            }
            byte[] bytes = resource.readAllBytes();
            double[] numbers = new double[bytes.length / Double.BYTES];
            ByteBuffer.wrap(bytes).asDoubleBuffer().get(numbers);
            return numbers;
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
