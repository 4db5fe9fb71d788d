package covewalk.survey.file.disk;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;

import covewalk.survey.Problem;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Held by the one program that writes in a survey's folder. It is a lock of the operating system on the file
 * {@code lock}, so it ends with the program that holds it, however that ends; who holds it stands in
 * {@code lock-holder}. Reading needs no lock.
 */
public final class FolderLock implements AutoCloseable {

    private final Path folder;
    private final FileChannel channel;
    private final FileLock lock;

    private FolderLock(Path folder, FileChannel channel, FileLock lock) {
        this.folder = folder;
        this.channel = channel;
        this.lock = lock;
    }

    /** Takes the lock, or says who has it. */
    public static Outcome<FolderLock> take(Path folder, Holder holder) {
        if (!Files.isDirectory(folder)) {
            return Outcome.refused(Problem.refusal("folder.missing"));
        }
        synchronized (FolderLock.class) { // between the question who holds it and the answer, nobody else in here may take it
            try {
                Optional<LockHolder> other = LockHolder.in(folder);
                if (other.isPresent() && other.get().isThisProcessIn(folder)) {
                    return held(folder); // opening and closing the file once more would lose the lock on some systems
                }
                return lock(folder, holder);
            } catch (IOException failed) {
                return Outcome.refused(Problem.refusal("lock.not-possible", DiskWords.reason(failed)));
            }
        }
    }

    private static Outcome<FolderLock> lock(Path folder, Holder holder) throws IOException {
        FileChannel channel = FileChannel.open(folder.resolve(FileNames.LOCK), WRITE, CREATE);
        try {
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                return held(folder);
            }
            LockHolder.write(folder, holder);
            return Outcome.of(new FolderLock(folder, channel, lock));
        } catch (OverlappingFileLockException here) {
            channel.close();
            return held(folder);
        } catch (IOException failed) {
            channel.close();
            throw failed;
        }
    }

    private static Outcome<FolderLock> held(Path folder) {
        String who = LockHolder.in(folder).map(LockHolder::words).orElse("another program");
        return Outcome.refused(Problem.refusal("lock.held", who));
    }

    /** The folder it is held on. */
    public Path folder() {
        return folder;
    }

    public boolean isHeld() {
        return lock.isValid();
    }

    @Override
    public void close() throws IOException {
        if (!channel.isOpen()) {
            return;
        }
        try {
            Files.deleteIfExists(folder.resolve(FileNames.LOCK_HOLDER));
        } finally {
            channel.close();
        }
    }
}
