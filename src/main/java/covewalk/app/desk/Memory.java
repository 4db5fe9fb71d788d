package covewalk.app.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What is remembered from one start to the next.
 *
 * @param recent folders of surveys, the latest first
 * @param place where the person was
 */
public record Memory(Settings settings, List<Path> recent, Place place) {

    private static final int MOST = 12;

    public Memory {
        recent = List.copyOf(recent);
    }

    /** Of somebody who starts it for the first time. */
    public static Memory blank() {
        return new Memory(Settings.usual(), List.of(), Place.SURVEYS);
    }

    public Memory with(Settings chosen) {
        return new Memory(chosen, recent, place);
    }

    public Memory at(Place now) {
        return new Memory(settings, recent, now);
    }

    /** With this survey as the latest. */
    public Memory opened(Path folder) {
        List<Path> folders = new ArrayList<>(recent);
        folders.remove(folder);
        folders.add(0, folder);
        return new Memory(settings, folders.subList(0, Math.min(MOST, folders.size())), place);
    }

    public Memory without(Path folder) {
        return new Memory(settings, recent.stream().filter(known -> !known.equals(folder)).toList(), place);
    }
}
