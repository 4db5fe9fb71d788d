package covewalk.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Files of one folder that get to their places together, or go away and leave what was there. Of one thread at a time. */
final class UnfinishedFiles implements AutoCloseable {

    private final Path folder;
    private final List<UnfinishedFile> files = new ArrayList<>();

    UnfinishedFiles(Path folder) {
        this.folder = folder;
    }

    void add(String name, UnfinishedFile.Content content) throws IOException {
        files.add(UnfinishedFile.of(folder.resolve(name), content));
    }

    /** Puts all of them in their places, in the order in which they were added. */
    List<Path> finish() throws IOException {
        List<Path> places = new ArrayList<>();
        for (UnfinishedFile file : files) {
            places.add(file.finish());
        }
        return places;
    }

    @Override
    public void close() throws IOException {
        for (UnfinishedFile file : files) {
            file.close();
        }
    }
}
