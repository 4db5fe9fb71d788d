package covewalk.survey.file.seal;

import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FoundFiles;
import covewalk.survey.file.disk.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The files of a survey that a seal covers, as they are now. */
final class SealedFiles {

    private static final List<String> WHOLE = List.of(FileNames.DESCRIPTION, FileNames.SET_ASIDE);
    private static final List<String> LOGS = List.of(FileNames.LOG, FileNames.PUNCH);
    private static final List<String> FOLDERS = List.of(FileNames.ORIGINALS, FileNames.PHOTOS);

    private SealedFiles() {
    }

    static SealEntry in(Path folder) throws IOException {
        List<SealedFile> files = new ArrayList<>();
        for (String name : WHOLE) {
            if (Files.isRegularFile(folder.resolve(name))) {
                files.add(seal(name, folder.resolve(name)));
            }
        }
        for (String name : LOGS) {
            if (Files.isRegularFile(folder.resolve(name))) {
                long length = wholeRows(folder.resolve(name));
                files.add(new SealedFile(name, length, Sha256.of(folder.resolve(name), length)));
            }
        }
        for (String name : FOLDERS) {
            addAll(folder, folder.resolve(name), files);
        }
        return new SealEntry(files);
    }

    private static void addAll(Path folder, Path inner, List<SealedFile> files) throws IOException {
        for (Path file : FoundFiles.under(inner).files()) {
            files.add(seal(folder.relativize(file).toString().replace('\\', '/'), file));
        }
    }

    private static SealedFile seal(String name, Path file) throws IOException {
        return new SealedFile(name, Files.size(file), Sha256.of(file));
    }

    /** An unfinished last line is cut off some day, and the seal must hold then too. */
    private static long wholeRows(Path log) throws IOException {
        long at = 0;
        long whole = 0;
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(log)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                for (int i = 0; i < read; i++) {
                    whole = buffer[i] == '\n' ? at + i + 1 : whole;
                }
                at += read;
            }
        }
        return whole;
    }
}
