package covewalk.app.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is remembered from one start to the next.
 *
 * @param recent folders of surveys, the latest first
 * @param place where the person was
 * @param meterShows which numbers the meter shows, in the words of the walk; empty before they were chosen
 * @param withoutDrift those of the recent surveys in which a drift of light or meter is taken off
 */
public record Memory(Settings settings, List<Path> recent, Place place, String meterShows, Set<Path> withoutDrift) {

    private static final int MOST = 12;

    public Memory {
        recent = List.copyOf(recent);
        Set<Path> known = new LinkedHashSet<>(withoutDrift);
        known.retainAll(recent);
        withoutDrift = Set.copyOf(known);
    }

    /** Before anybody said what the meter shows. */
    public Memory(Settings settings, List<Path> recent, Place place) {
        this(settings, recent, place, "", Set.of());
    }

    /** Of somebody who starts it for the first time. */
    public static Memory blank() {
        return new Memory(Settings.usual(), List.of(), Place.SURVEYS);
    }

    public Memory with(Settings chosen) {
        return new Memory(chosen, recent, place, meterShows, withoutDrift);
    }

    public Memory at(Place now) {
        return new Memory(settings, recent, now, meterShows, withoutDrift);
    }

    public Memory withMeterShows(String shows) {
        return new Memory(settings, recent, place, shows, withoutDrift);
    }

    /** With this survey as the latest. */
    public Memory opened(Path folder) {
        List<Path> folders = new ArrayList<>(recent);
        folders.remove(folder);
        folders.add(0, folder);
        return new Memory(settings, folders.subList(0, Math.min(MOST, folders.size())), place, meterShows, withoutDrift);
    }

    public Memory without(Path folder) {
        return new Memory(settings, recent.stream().filter(known -> !known.equals(folder)).toList(), place, meterShows, withoutDrift);
    }

    /** @param off whether a drift is taken off in that survey, which is one of the recent ones */
    public Memory withDrift(Path folder, boolean off) {
        Set<Path> folders = new LinkedHashSet<>(withoutDrift);
        if (off) {
            folders.add(folder);
        } else {
            folders.remove(folder);
        }
        return new Memory(settings, recent, place, meterShows, folders);
    }
}
