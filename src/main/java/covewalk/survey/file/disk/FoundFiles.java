package covewalk.survey.file.disk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What lies in a folder of a survey, at any depth. Links are not followed: what they point at is no part of the survey, and may
 * change or go without anybody touching it. So a seal does not cover it, no page shows it, and no copy takes it along.
 *
 * @param files the files themselves
 * @param links links to files and to folders alike
 */
public record FoundFiles(List<Path> files, List<Path> links) {

    /**
     * @param fileOrFolder a file is found itself; nothing is where nothing is there
     * @throws IOException where it or a folder in it cannot be read
     */
    public static FoundFiles under(Path fileOrFolder) throws IOException {
        if (!Files.exists(fileOrFolder, LinkOption.NOFOLLOW_LINKS)) {
            return new FoundFiles(List.of(), List.of());
        }
        try (Stream<Path> walk = Files.walk(fileOrFolder)) {
            List<Path> all = walk.toList();
            return new FoundFiles(all.stream().filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)).toList(),
                    all.stream().filter(Files::isSymbolicLink).toList());
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
        }
    }
}
