package covewalk.app.desk;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;
import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where {@link Memory} lies on this computer. Losing it loses no reading, so a file that cannot be read counts as none, and
 * one that cannot be written is left.
 */
public final class MemoryFile {

    private final Path file;

    public MemoryFile(Path file) {
        this.file = file;
    }

    /**
     * Where programs of this system keep such files.
     *
     * @param environment of the process
     * @param home the user's folder
     */
    public static MemoryFile of(Map<String, String> environment, String system, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("win")) {
            return in(environment.containsKey("APPDATA") ? Path.of(environment.get("APPDATA")) : home);
        }
        if (name.contains("mac")) {
            return in(home.resolve("Library").resolve("Application Support"));
        }
        String config = environment.getOrDefault("XDG_CONFIG_HOME", "");
        return in(config.isEmpty() ? home.resolve(".config") : Path.of(config));
    }

    private static MemoryFile in(Path folder) {
        return new MemoryFile(folder.resolve("covewalk").resolve("app.properties"));
    }

    public Memory read() {
        Properties found = new Properties();
        try {
            found.load(new StringReader(Files.readString(file)));
        } catch (IOException | IllegalArgumentException unreadable) {
            return Memory.blank();
        }
        return new Memory(settings(found), folders(found, "survey."), place(found.getProperty("place", "")),
                found.getProperty("meter", ""), Set.copyOf(folders(found, "without-drift.")));
    }

    private static Settings settings(Properties found) {
        Settings usual = Settings.usual();
        Theme theme = Theme.of(found.getProperty("theme", "")).orElse(usual.theme());
        Locale language = Locale.forLanguageTag(found.getProperty("language", usual.language().toLanguageTag()));
        return new Settings(theme, number(found.getProperty("text", ""), usual.textPercent()), language,
                Boolean.parseBoolean(found.getProperty("feet", "false")), Boolean.parseBoolean(found.getProperty("sound", "true")));
    }

    private static int number(String text, int otherwise) {
        return text.matches("[0-9]{1,3}") ? Integer.parseInt(text) : otherwise;
    }

    private static List<Path> folders(Properties found, String key) {
        return IntStream.range(0, 100).mapToObj(i -> found.getProperty(key + i, "")).filter(text -> !text.isEmpty())
                .flatMap(text -> {
                    try {
                        return Stream.of(Path.of(text));
                    } catch (InvalidPathException ofAnotherSystem) {
                        return Stream.empty();
                    }
                }).distinct().toList();
    }

    private static Place place(String code) {
        return Arrays.stream(Place.values()).filter(place -> place.code().equals(code)).findFirst().orElse(Place.SURVEYS);
    }

    public void write(Memory memory) {
        Properties kept = new Properties();
        kept.setProperty("theme", memory.settings().theme().code());
        kept.setProperty("text", Integer.toString(memory.settings().textPercent()));
        kept.setProperty("language", memory.settings().language().toLanguageTag());
        kept.setProperty("feet", Boolean.toString(memory.settings().feet()));
        kept.setProperty("sound", Boolean.toString(memory.settings().sound()));
        kept.setProperty("place", memory.place().code());
        kept.setProperty("meter", memory.meterShows());
        keep(kept, "survey.", memory.recent());
        keep(kept, "without-drift.", List.copyOf(memory.withoutDrift()));
        try {
            StringWriter text = new StringWriter();
            kept.store(text, null);
            Files.createDirectories(file.getParent());
            Path beside = file.resolveSibling(file.getFileName() + ".new");
            Files.writeString(beside, text.toString());
            Files.move(beside, file, ATOMIC_MOVE, REPLACE_EXISTING);
        } catch (IOException notRemembered) {
            // the next start begins with the usual settings
        }
    }

    private static void keep(Properties kept, String key, List<Path> folders) {
        for (int i = 0; i < folders.size(); i++) {
            kept.setProperty(key + i, folders.get(i).toString());
        }
    }
}
