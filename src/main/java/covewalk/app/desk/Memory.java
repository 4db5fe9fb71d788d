package covewalk.app.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What is remembered from one start to the next.
 *
 * @param recent folders of surveys, the latest first
 * @param place where the person was
 * @param meterShows which numbers the meter shows, in the words of the walk; empty before they were chosen
 */
public record Memory(Settings settings, List<Path> recent, Place place, String meterShows) {

    private static final int MOST = 12;

    public Memory {
        recent = List.copyOf(recent);
    }

    /** Before anybody said what the meter shows. */
    public Memory(Settings settings, List<Path> recent, Place place) {
        this(settings, recent, place, "");
    }

    /** Of somebody who starts it for the first time. */
    public static Memory blank() {
        return new Memory(Settings.usual(), List.of(), Place.SURVEYS);
    }

    public Memory with(Settings chosen) {
        return new Memory(chosen, recent, place, meterShows);
    }

    public Memory at(Place now) {
        return new Memory(settings, recent, now, meterShows);
    }

    public Memory withMeterShows(String shows) {
        return new Memory(settings, recent, place, shows);
    }

    /** With this survey as the latest. */
    public Memory opened(Path folder) {
        List<Path> folders = new ArrayList<>(recent);
        folders.remove(folder);
        folders.add(0, folder);
        return new Memory(settings, folders.subList(0, Math.min(MOST, folders.size())), place, meterShows);
    }

    public Memory without(Path folder) {
        return new Memory(settings, recent.stream().filter(known -> !known.equals(folder)).toList(), place, meterShows);
    }
}
