package covewalk.survey.file.disk;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * A disk that keeps only what was flushed, and fails when told to. After a failed flush it calls what it could not write
 * clean, as some systems do: a second flush through the same channel succeeds and keeps nothing.
 */
final class ForgetfulDisk implements LogChannel.Opener {

    /** What the next write or flush does. */
    enum Next { WRITES, FAILS, WRITES_HALF_AND_FAILS, FLUSH_FAILS, FLUSH_FAILS_LATE }

    private final Deque<Next> plan = new ArrayDeque<>();
    private byte[] onDisk;
    private byte[] inMemory;
    private int opened;

    ForgetfulDisk(byte[] content) {
        onDisk = content.clone();
        inMemory = content.clone();
    }

    void then(Next... next) {
        plan.addAll(Arrays.asList(next));
    }

    /** The power goes: what was not flushed is gone. */
    byte[] afterPowerCut() {
        return onDisk.clone();
    }

    byte[] seenByReaders() {
        return inMemory.clone();
    }

    int timesOpened() {
        return opened;
    }

    /** Another program writes. */
    void overwrite(byte[] content) {
        inMemory = content.clone();
        onDisk = content.clone();
    }

    @Override
    public LogChannel open() {
        opened++;
        return new Channel();
    }

    private final class Channel implements LogChannel {

        private boolean dirty;
        private boolean broken;
        private Next now = Next.WRITES;

        @Override
        public long size() {
            return inMemory.length;
        }

        @Override
        public byte[] read(long from, int most) {
            int start = (int) Math.min(from, inMemory.length);
            return Arrays.copyOfRange(inMemory, start, Math.min(inMemory.length, start + most));
        }

        @Override
        public void write(long at, byte[] bytes) throws IOException {
            now = plan.isEmpty() ? Next.WRITES : plan.poll();
            if (now == Next.FAILS) {
                throw new IOException("No space left on device");
            }
            int length = now == Next.WRITES_HALF_AND_FAILS ? bytes.length / 2 : bytes.length;
            inMemory = Arrays.copyOf(inMemory, Math.max(inMemory.length, (int) at + length));
            System.arraycopy(bytes, 0, inMemory, (int) at, length);
            dirty = true;
            if (now == Next.WRITES_HALF_AND_FAILS) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void truncate(long size) {
            inMemory = Arrays.copyOf(inMemory, (int) Math.min(size, inMemory.length));
            now = Next.WRITES;
            dirty = true;
        }

        @Override
        public void force() throws IOException {
            if (now == Next.FLUSH_FAILS && !broken) {
                broken = true;
                dirty = false;
                throw new IOException("Input/output error");
            }
            if (dirty) {
                onDisk = inMemory.clone();
            }
            if (now == Next.FLUSH_FAILS_LATE && !broken) {
                broken = true;
                throw new IOException("Input/output error");
            }
        }

        @Override
        public void close() {
            dirty = false;
        }
    }
}
